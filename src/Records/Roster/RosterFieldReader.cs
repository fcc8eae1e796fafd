using System.Text;
using Slantwise.Records.Checks;
using Slantwise.Records.Csv;

namespace Slantwise.Records.Roster;

/// <summary>Takes the fields of one row, and refuses those that cannot be kept.</summary>
internal sealed class RosterFieldReader(CsvRow row, List<Finding> findings)
{
    /// <summary>Whether any field of the row was refused.</summary>
    public bool HasRefused { get; private set; }

    public void Refuse(string key, params object[] arguments)
    {
        findings.Add(Finding.Refused(key, arguments));
        HasRefused = true;
    }

    /// <summary>A field, its white space made single spaces and its accents composed; none where it is empty or refused.</summary>
    public string? Optional(int? column, int lengthMost)
    {
        var text = string.Join(' ', row[column].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Normalize(NormalizationForm.FormC);
        if (text.Length == 0) return null;
        if (text.Length <= lengthMost) return text;
        Refuse("FieldTooLong", row.At(column), lengthMost, text.Length);
        return null;
    }

    /// <summary>A field that must not be empty; an empty text where it was refused.</summary>
    public string Required(int? column, int lengthMost)
    {
        var isMissing = row[column].Length == 0;
        if (isMissing) Refuse("FieldMissing", row.At(column));
        return isMissing ? "" : Optional(column, lengthMost) ?? "";
    }

    /// <summary>A pupil's code: letters, digits and hyphens.</summary>
    public string? Code(int? column)
    {
        var code = Optional(column, Limits.CodeLength);
        if (code is null || code.All(c => char.IsLetterOrDigit(c) || c == '-')) return code;
        Refuse("CodeHasOtherCharacters", row.At(column), TextCheck.Visible(code));
        return null;
    }

    /// <summary>A field with a fixed set of values, case not counting; the first of them where it is empty and that is allowed.</summary>
    public string? OneOf(int? column, IReadOnlyList<string> allowed, bool mayBeEmpty)
    {
        var text = row[column];
        if (text.Length == 0 && mayBeEmpty) return allowed[0];
        if (allowed.FirstOrDefault(a => a.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } value) return value;
        Refuse(text.Length == 0 ? "FieldMissing" : "FieldNotOneOf", row.At(column), TextCheck.Visible(text), string.Join(", ", allowed));
        return null;
    }
}
