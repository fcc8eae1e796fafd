using System.Globalization;
using System.Text;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tasks.Designs.Grids;

/// <summary>Keys of rows and values from what a teacher calls them: one word in camel case that a file can hold.</summary>
internal static class FactorKeys
{
    private const int LengthMost = 24;

    /// <summary>A key that none of those taken is, nor a dose's word.</summary>
    public static string Of(string name, IReadOnlyCollection<string> taken)
    {
        var made = new StringBuilder();
        var isNew = false;
        // "Ángulo de la cadera" becomes anguloDeLaCadera: an accent is a sign of its own once taken apart.
        foreach (var letter in name.Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) == UnicodeCategory.NonSpacingMark) continue;
            if (!char.IsAsciiLetterOrDigit(letter)) isNew = made.Length > 0;
            else if (made.Length < LengthMost && (made.Length > 0 || char.IsAsciiLetter(letter)))
            {
                made.Append(isNew ? char.ToUpperInvariant(letter) : made.Length == 0 ? char.ToLowerInvariant(letter) : letter);
                isNew = false;
            }
        }
        var key = made.Length == 0 ? "value" : made.ToString();
        bool IsTaken(string k) => taken.Contains(k) || TaskFileWords.Doses.ContainsKey(k);
        if (!IsTaken(key)) return key;
        return Enumerable.Range(2, int.MaxValue - 2).Select(n => key + n.ToString(CultureInfo.InvariantCulture)).First(k => !IsTaken(k));
    }
}
