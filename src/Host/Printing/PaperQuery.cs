using System.Collections.Frozen;
using System.Globalization;
using Slantwise.Paper;

namespace Slantwise.Host.Printing;

/// <summary>How to print, from the address of one of the desk's links.</summary>
internal static class PaperQuery
{
    /// <summary>The words for the sizes of station cards, in addresses and on the command line.</summary>
    public static readonly FrozenDictionary<string, CardSize> CardSizes =
        new Dictionary<string, CardSize> { ["half"] = CardSize.HalfPage, ["full"] = CardSize.FullPage }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The words for the sizes of posters.</summary>
    public static readonly FrozenDictionary<string, PosterSize> PosterSizes =
        new Dictionary<string, PosterSize> { ["one"] = PosterSize.OnePage, ["two"] = PosterSize.TwoPages, ["double"] = PosterSize.Double }.ToFrozenDictionary(StringComparer.Ordinal);

    private const int MostSpareCount = 60;
    private const int MostSpareNumber = 9999;

    /// <summary>What the address asks for. What it asks wrongly is passed over: it was made by a page, or typed.</summary>
    public static PaperOptions Of(IQueryCollection query)
    {
        bool Has(string name) => query[name] is [{ } value] && value is "1" or "on" or "true";
        int Number(string name, int least, int most) =>
            int.TryParse(query[name].ToString(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? Math.Clamp(number, least, most) : least;
        return new PaperOptions(string.Equals(query["size"], "letter", StringComparison.OrdinalIgnoreCase) ? PaperSize.Letter : PaperSize.A4, LanguageOf(query["paper-language"].ToString()))
        {
            SpareCount = Number("spare", 0, MostSpareCount),
            FirstSpareNumber = Number("spare-from", 1, MostSpareNumber),
            IsTwoSided = Has("two-sided"),
            IsTwoUp = query["look"] == "two-up",
            IsLargePrint = query["look"] == "large",
            HasWideSpacing = Has("wide-spacing"),
            HasSigns = Has("signs"),
            IsCream = Has("cream"),
            CardSize = CardSizes.GetValueOrDefault(query["cards"].ToString(), CardSize.HalfPage),
            PosterSize = PosterSizes.GetValueOrDefault(query["poster-size"].ToString(), PosterSize.OnePage),
            NamesOtherLevels = Has("name-others"),
        };
    }

    private static CultureInfo LanguageOf(string name) => name is "en" or "es" ? CultureInfo.GetCultureInfo(name) : CultureInfo.CurrentUICulture;
}
