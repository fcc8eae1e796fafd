using System.Text.RegularExpressions;

namespace Slantwise.Records.Units.Import;

/// <summary>Tells the licences by which sentences may be copied, as far as a name or an address says it. What is not recognised counts as not open.</summary>
public static partial class OpenLicence
{
    /// <summary>What words about rights say.</summary>
    /// <param name="words">Names and addresses of licences and sentences about rights; may be empty.</param>
    public static LicenceStanding Of(IEnumerable<string> words)
    {
        var said = words.Where(w => !string.IsNullOrWhiteSpace(w)).ToList();
        if (said.Count == 0) return LicenceStanding.Unnamed;
        return said.All(IsOpen) ? LicenceStanding.Open : LicenceStanding.Closed;
    }

    private static bool IsOpen(string words) => Opening().IsMatch(words) && !Closing().IsMatch(words);

    [GeneratedRegex(
        @"creativecommons\.org/(licenses|publicdomain)|creative\s+commons|\bCC[\s-]?(BY|0|ZERO)\b|\bpublic\s+domain\b|\bdominio\s+público\b|open\s+government\s+licen[cs]e|nationalarchives\.gov\.uk/doc/open-government-licence",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Opening();

    // "Not in the public domain", "All rights reserved" beside a mention of what is not meant.
    [GeneratedRegex(
        @"all\s+rights\s+reserved|todos\s+los\s+derechos\s+reservados|\b(not|no|neither|never|ni)\b[^.;]{0,30}(creative\s+commons|public\s+domain|dominio\s+público|open\s+government)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Closing();
}
