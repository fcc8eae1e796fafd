using System.Security.Cryptography;
using System.Text;
using Slantwise.Records.Checks;
using Slantwise.Records.Csv;

namespace Slantwise.Records.Units.Import;

/// <summary>Reads what pupils should be able to show from a file: a CASE package, or a table.</summary>
/// <remarks>Source: [CASE2017] for the names of packages; [RFC4180] section 2 for tables.</remarks>
public static class OutcomeFiles
{
    /// <summary>The largest file that is read. A state's framework with all its subjects takes a few million bytes.</summary>
    public const int MostBytes = 8 * 1024 * 1024;

    /// <summary>The most items that are looked at.</summary>
    public const int MostCandidates = 2000;

    /// <summary>Reads a file.</summary>
    /// <param name="fileName">What findings call it.</param>
    /// <param name="bytes">The whole file.</param>
    /// <returns>What it offers, and every finding. Bad text is a finding, never an exception.</returns>
    public static OutcomeReading Read(string fileName, ReadOnlySpan<byte> bytes)
    {
        var place = new FilePlace(fileName);
        if (bytes.Length > MostBytes)
            return new() { FileName = fileName, Standing = LicenceStanding.Unnamed, Findings = [Finding.Refused("OutcomeFileTooLarge", place, MostBytes / 1024 / 1024)] };
        var decoded = DecodedText.Read(bytes);
        var text = decoded.Text.TrimStart('\uFEFF');
        var reading = text.AsSpan().TrimStart() is ['{' or '[', ..] ? new CaseReader(fileName).Read(text) : OutcomeTable.Read(fileName, text);
        return decoded.IsGuessed ? reading with { Findings = [Finding.Flagged("FileEncodingGuessed", place), .. reading.Findings] } : reading;
    }

    /// <summary>An id that is the same for the same words every time, for what has none of its own.</summary>
    internal static Guid IdOf(params string[] words)
    {
        var bytes = SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\u001F', words)))[..16];
        // Source: [RFC9562] section 5.8, version 8: an id of one's own making.
        bytes[6] = (byte)((bytes[6] & 0x0F) | 0x80);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return new Guid(bytes, bigEndian: true);
    }

    /// <summary>A text as one line: white space and what cannot be seen become single spaces.</summary>
    internal static string Line(string text)
    {
        var line = new StringBuilder();
        foreach (var c in text)
        {
            var isGap = char.IsWhiteSpace(c) || char.IsControl(c);
            if (!isGap) line.Append(c);
            else if (line.Length > 0 && line[^1] != ' ') line.Append(' ');
        }
        return line.ToString().TrimEnd();
    }

    /// <summary>A candidate from its words, with findings about what is too long to keep.</summary>
    internal static OutcomeCandidate Candidate(FilePlace place, Guid id, int number, string code, string text, string shortText, string framework)
    {
        var findings = new List<Finding>();
        if (code.Length > UnitLimits.CodeLength) findings.Add(Finding.Refused("OutcomeFileCodeTooLong", place, TextCheck.Visible(code), UnitLimits.CodeLength));
        if (framework.Length > UnitLimits.FrameworkLength) framework = framework[..(UnitLimits.FrameworkLength - 1)].TrimEnd() + "…";
        if (text.Length > UnitLimits.OutcomeLength)
        {
            // Half a sentence may say the opposite: where there is no short form, there is only the code.
            text = shortText.Length is > 0 and <= UnitLimits.OutcomeLength ? shortText : "";
            findings.Add(Finding.Flagged(text.Length > 0 ? "OutcomeFileShortForm" : "OutcomeFileTextTooLong", place, UnitLimits.OutcomeLength));
        }
        if (code.Length + text.Length == 0) findings.Add(Finding.Refused("OutcomeFileItemEmpty", place));
        return new OutcomeCandidate { Id = id, Place = number, Code = code, Text = text, Framework = framework, Findings = findings };
    }
}
