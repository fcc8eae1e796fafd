using System.Globalization;
using Slantwise.Records.Halls.Drawing;

namespace Slantwise.Records.Halls;

/// <summary>Stations and falling circles in words.</summary>
public static class StationWording
{
    /// <summary>A station's letter and name.</summary>
    /// <param name="layout">With its stations.</param>
    /// <param name="station">The station, from 0.</param>
    /// <param name="culture">The reader's language.</param>
    public static string NameOf(HallLayout layout, int station, CultureInfo culture) => layout.Stations[station].Name is { Length: > 0 } name
        ? HallWords.Text("Station", culture, StationLetter.Of(station + 1), name) : HallWords.Text("StationUnnamed", culture, StationLetter.Of(station + 1));

    /// <summary>The numbers of a station's mats in words.</summary>
    /// <param name="layout">With its mats.</param>
    /// <param name="station">The station, from 0.</param>
    /// <param name="culture">The reader's language.</param>
    public static string MatsOf(HallLayout layout, int station, CultureInfo culture)
    {
        var numbers = Enumerable.Range(1, layout.Mats.Count).Where(m => layout.Mats[m - 1].Station == station + 1).ToList();
        return numbers.Count == 0 ? HallWords.Text("StationNoMats", culture) : HallWords.Text("StationMats", culture, string.Join(", ", numbers));
    }

    /// <summary>A warning as a sentence.</summary>
    /// <param name="warning">One of the plan's.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Of(StationWarning warning, StationPlan plan, CultureInfo culture) =>
        HallWords.Text("Warning" + warning, culture, plan.NeededMin, plan.PracticeMin, plan.GroupCount, plan.Rounds.Count);

    /// <summary>A task's circle as a sentence.</summary>
    /// <param name="fall">The circle.</param>
    /// <param name="culture">The reader's language.</param>
    public static string Of(TaskFall fall, CultureInfo culture) => HallWords.Text("Fall" + fall.Ground, culture, fall.Name, fall.RadiusM, fall.HeightH);

    /// <summary>What circles are reckoned with.</summary>
    /// <param name="ageYears">The class's age; none where nobody said.</param>
    /// <param name="culture">The reader's language.</param>
    /// <exception cref="ArgumentOutOfRangeException">An age not of 5 to 18.</exception>
    public static string OfStature(int? ageYears, CultureInfo culture) =>
        HallWords.Text(ageYears is null ? "StatureNone" : "StatureAge", culture, FallStature.OfM(ageYears), ageYears);
}
