using System.Globalization;
using Slantwise.Records.Schools;

namespace Slantwise.Paper.Sheets;

/// <summary>What a pupil is called on paper.</summary>
internal static class Labels
{
    /// <summary>The label, or the code where our type has no letters for the label: a name of empty boxes would serve nobody.</summary>
    public static string Of(Pupil pupil) => PaperFonts.Has(pupil.Label) ? Printable.Of(pupil.Label).Trim() : pupil.Code;

    public static IEnumerable<Pupil> InOrder(IEnumerable<Pupil> pupils, CultureInfo language) => pupils
        .OrderBy(p => p.Label, StringComparer.Create(language, ignoreCase: true))
        .ThenBy(p => p.Code, StringComparer.Ordinal);
}
