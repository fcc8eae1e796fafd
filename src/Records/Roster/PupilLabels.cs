using System.Globalization;

namespace Slantwise.Records.Roster;

/// <summary>Labels made of names: the given name alone, and where pupils of one class share it as few letters of the family name as tell them apart.</summary>
/// <remarks>At most three letters are kept: two pupils whose names begin alike are told apart by their codes.</remarks>
internal static class PupilLabels
{
    public const int LettersMost = 3;

    /// <summary>The letters of the family name each pupil needs.</summary>
    /// <param name="classmates">Those who share a class and a given name, by identity with their family name.</param>
    /// <returns>0 to 3 for each identity; 1 for those whom no number of letters tells apart.</returns>
    public static IReadOnlyDictionary<string, int> LettersFor(IReadOnlyDictionary<string, string> classmates)
    {
        if (classmates.Count < 2) return classmates.Keys.ToDictionary(k => k, _ => 0);
        return classmates.ToDictionary(own => own.Key, own =>
        {
            for (var letters = 1; letters <= LettersMost; letters++)
            {
                var prefix = Prefix(own.Value, letters);
                if (prefix.Length > 0 && classmates.All(o => o.Key == own.Key || !Same(Prefix(o.Value, letters), prefix))) return letters;
            }
            return 1;
        });
    }

    /// <summary>A label with some letters of the family name: "Ana", "Ana G.", "Ana Ga.".</summary>
    public static string Of(string givenName, string? familyName, int letters)
    {
        var prefix = Prefix(familyName ?? "", letters);
        return prefix.Length == 0 ? givenName : $"{givenName} {prefix}.";
    }

    /// <summary>Every label a pupil may have had.</summary>
    public static IReadOnlyList<string> All(string givenName, string? familyName) =>
        Enumerable.Range(0, LettersMost + 1).Select(n => Of(givenName, familyName, n)).Distinct(StringComparer.Ordinal).ToList();

    private static string Prefix(string familyName, int letters)
    {
        // Text elements, so that an accent stays with its letter.
        var elements = StringInfo.GetTextElementEnumerator(familyName);
        var prefix = "";
        for (var taken = 0; taken < letters && elements.MoveNext(); taken++) prefix += elements.GetTextElement();
        prefix = prefix.TrimEnd();
        return prefix.Length == 0 ? "" : char.ToUpperInvariant(prefix[0]) + prefix[1..];
    }

    private static bool Same(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
}
