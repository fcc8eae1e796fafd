namespace Slantwise.Engines.Marks;

/// <summary>The blobs of a mask: runs of rows, joined where they touch, corners included.</summary>
/// <remarks>Source: [RosenfeldPfaltz1966] labels and their equivalences in one pass over the rows.</remarks>
internal static class Blobs
{
    /// <summary>All of them, those of fewer pixels than asked for left out.</summary>
    public static List<Blob> Of(byte[] mask, int width, int height, int leastCount)
    {
        var (parents, sums) = (new List<int>(), new List<Blob>());
        List<(int From, int To, int Label)> above = [], here = [];
        for (var y = 0; y < height; y++)
        {
            here.Clear();
            var row = mask.AsSpan(y * width, width);
            var (x, next) = (0, 0);
            while (true)
            {
                var skip = row[x..].IndexOf((byte)1);
                if (skip < 0) break;
                var from = x + skip;
                var length = row[from..].IndexOf((byte)0);
                var to = length < 0 ? width : from + length;
                here.Add((from, to, Label(above, ref next, from, to, parents, sums, Blob.OfRun(from, to, y))));
                x = to;
                if (x >= width) break;
            }
            (above, here) = (here, above);
        }
        for (var i = parents.Count - 1; i >= 0; i--)
        {
            var root = Root(parents, i);
            if (root != i) sums[root] += sums[i];
        }
        return [.. Enumerable.Range(0, parents.Count).Where(i => parents[i] == i && sums[i].Count >= leastCount).Select(i => sums[i])];
    }

    private static int Label(List<(int From, int To, int Label)> above, ref int next, int from, int to, List<int> parents, List<Blob> sums, Blob run)
    {
        var label = -1;
        while (next < above.Count && above[next].To < from) next++;
        for (var i = next; i < above.Count && above[i].From <= to; i++)
        {
            var other = Root(parents, above[i].Label);
            if (label < 0) label = other;
            else if (label != other)
            {
                // The older label stays, so that children always come after their parents.
                var (older, newer) = label < other ? (label, other) : (other, label);
                parents[newer] = older;
                label = older;
            }
        }
        if (label < 0)
        {
            label = parents.Count;
            parents.Add(label);
            sums.Add(run);
        }
        else sums[label] += run;
        return label;
    }

    private static int Root(List<int> parents, int label)
    {
        while (parents[label] != label)
        {
            parents[label] = parents[parents[label]];
            label = parents[label];
        }
        return label;
    }
}
