using System.Globalization;

namespace Slantwise.Host.Studies;

/// <summary>Numbers as these commands write them: three decimals for people, a dash for what is not defined, nothing infinite for programs.</summary>
internal static class Numbers
{
    public const string None = "–";

    public static string Of(double? number, int decimals = 3) => number is { } n ? n.ToString("F" + decimals, CultureInfo.CurrentCulture) : None;

    public static string Of(int count) => count.ToString(CultureInfo.CurrentCulture);

    /// <summary>A chance, of which "0.0000" would say that it cannot be.</summary>
    public static string Chance(double? chance) => chance < 0.0001 ? StudyWords.Say("Under", 0.0001) : Of(chance, 4);

    /// <summary>A range in words: "0.23 to 0.88".</summary>
    public static string Range(double? low, double? high, int decimals = 3) =>
        low is null && high is null ? None : StudyWords.Say("Range", low is null ? StudyWords.Say("NoLimit") : Of(low, decimals), high is null ? StudyWords.Say("NoLimit") : Of(high, decimals));

    /// <summary>A number that JSON can hold; none otherwise.</summary>
    public static double? Finite(double number) => double.IsFinite(number) ? number : null;
}
