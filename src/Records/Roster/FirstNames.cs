using Slantwise.Records.Schools;

namespace Slantwise.Records.Roster;

/// <summary>First names for a page that others may see: nothing more of a name than is needed to tell who is who.</summary>
public static class FirstNames
{
    /// <summary>The first names, in the order of the pupils.</summary>
    /// <param name="pupils">The pupils; may be empty.</param>
    /// <param name="labelOf">What a pupil is called; the record's label if not given.</param>
    /// <returns>The first word of each label; the whole label where two begin alike; with the code behind it where two are alike.</returns>
    public static IReadOnlyList<string> Of(IReadOnlyList<Pupil> pupils, Func<Pupil, string>? labelOf = null)
    {
        var labels = pupils.Select(p => (labelOf?.Invoke(p) ?? p.Label).Trim()).ToList();
        var firsts = labels.Select(l => l.Split(' ')[0]).ToList();
        bool IsAlone(string name, IEnumerable<string> names) => names.Count(n => string.Equals(n, name, StringComparison.OrdinalIgnoreCase)) == 1;
        return [.. pupils.Select((p, i) => IsAlone(firsts[i], firsts) ? firsts[i] : IsAlone(labels[i], labels) ? labels[i] : $"{labels[i]} ({p.Code})")];
    }
}
