namespace Slantwise.Engines.Mechanics;

/// <summary>How tall the middle child of an age is, to say centimetres without asking anybody's size.</summary>
/// <remarks>
/// Medians at whole years 5 to 20, from the L, M and S of the half-month rows, linear between them. United States children of the
/// 1960s to 1990s; public domain. Source: [CDC2000] stature for age.
/// </remarks>
public static class StatureMedian
{
    private const int FirstAge = 5;
    private static readonly double[] BoysCm = [108.9, 115.4, 121.8, 127.9, 133.5, 138.6, 143.5, 149.1, 156.1, 163.8, 169.9, 173.5, 175.3, 176.2, 176.6, 176.8];
    private static readonly double[] GirlsCm = [107.7, 114.7, 121.5, 127.6, 132.9, 138.0, 144.0, 151.2, 157.2, 160.4, 161.9, 162.5, 162.9, 163.1, 163.3, 163.3];

    /// <summary>The median stature at an age.</summary>
    /// <param name="ageYearCount">Whole years, 5 to 20.</param>
    /// <param name="sex">Whose table; none for the mean of both.</param>
    /// <exception cref="ArgumentOutOfRangeException">An age outside the table.</exception>
    public static double OfCm(int ageYearCount, Sex? sex)
    {
        if (ageYearCount is < FirstAge or > 20)
            throw new ArgumentOutOfRangeException(nameof(ageYearCount), ageYearCount, "The table of statures holds whole years from 5 to 20.");
        var (boyCm, girlCm) = (BoysCm[ageYearCount - FirstAge], GirlsCm[ageYearCount - FirstAge]);
        return sex switch { Sex.Male => boyCm, Sex.Female => girlCm, _ => (boyCm + girlCm) / 2 };
    }
}
