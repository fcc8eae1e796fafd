using Slantwise.Records.Schools;

namespace Slantwise.Records.Safety;

/// <summary>First names for a page that others may see: nothing more of a name than is needed to tell who is who.</summary>
public static class FirstNames
{
    /// <summary>The first names, in the order of the pupils.</summary>
    /// <param name="pupils">The pupils; may be empty.</param>
    /// <param name="labelOf">What a pupil is called; the record's label if not given.</param>
    /// <returns>The first word of each label; with the code behind it where two are alike.</returns>
    public static IReadOnlyList<string> Of(IReadOnlyList<Pupil> pupils, Func<Pupil, string>? labelOf = null)
    {
        string First(Pupil pupil) => (labelOf?.Invoke(pupil) ?? pupil.Label).Trim().Split(' ')[0];
        var shared = pupils.CountBy(First).Where(c => c.Value > 1).Select(c => c.Key).ToHashSet(StringComparer.Ordinal);
        return [.. pupils.Select(p => shared.Contains(First(p)) ? $"{First(p)} ({p.Code})" : First(p))];
    }
}
