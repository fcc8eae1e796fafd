using System.Globalization;

namespace Slantwise.Records.Groups;

/// <summary>Which groups use which mats, by number.</summary>
public static class GroupMats
{
    /// <summary>Mats there are at most.</summary>
    public const int MostMats = 100;

    /// <summary>Mats shared out in order, as evenly as can be; where there are fewer mats than groups, neighbours share one.</summary>
    /// <param name="mats">Mats there are, 1 to <see cref="MostMats"/>; none or 0 where nobody planned any, and then no group has one.</param>
    /// <param name="groups">1 or more.</param>
    /// <returns>For each group its mats, from 1.</returns>
    public static IReadOnlyList<IReadOnlyList<int>> Shared(int? mats, int groups)
    {
        if (mats is not > 0) return [.. Enumerable.Range(0, groups).Select(_ => Array.Empty<int>())];
        var count = Math.Min(mats.Value, MostMats);
        return
        [
            .. Enumerable.Range(0, groups).Select(g => count < groups
                ? [g * count / groups + 1]
                : Enumerable.Range(g * count / groups + 1, (g + 1) * count / groups - g * count / groups).ToArray()),
        ];
    }

    /// <summary>Mats in a text: numbers with commas or spaces between them, and from-to with a hyphen.</summary>
    /// <param name="text">What was typed; empty for no mat.</param>
    /// <returns>Ascending, each once; none where it cannot be read or a number is not of 1 to <see cref="MostMats"/>.</returns>
    public static IReadOnlyList<int>? Read(string text)
    {
        var mats = new SortedSet<int>();
        foreach (var part in text.Replace('–', '-').Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries))
        {
            var ends = part.Split('-');
            if (ends.Length > 2 || Number(ends[0]) is not { } from || Number(ends[^1]) is not { } to || to < from) return null;
            for (var mat = from; mat <= to; mat++) mats.Add(mat);
        }
        return [.. mats];
    }

    /// <summary>Mats as a text: neighbours as from-to.</summary>
    /// <param name="mats">Ascending, each once.</param>
    public static string Text(IReadOnlyList<int> mats)
    {
        var parts = new List<string>();
        for (var i = 0; i < mats.Count; i++)
        {
            var first = i;
            while (i + 1 < mats.Count && mats[i + 1] == mats[i] + 1) i++;
            parts.Add(i - first >= 2 ? $"{Said(mats[first])}–{Said(mats[i])}" : string.Join(", ", mats.Skip(first).Take(i - first + 1).Select(Said)));
        }
        return string.Join(", ", parts);
    }

    private static string Said(int mat) => mat.ToString(CultureInfo.InvariantCulture);

    private static int? Number(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var mat) && mat is >= 1 and <= MostMats ? mat : null;
}
