using System.Globalization;

namespace Slantwise.Bench.Floor.Budgets;

/// <summary>Many times, said in a line.</summary>
internal static class Numbers
{
    public static string Said(this IReadOnlyCollection<double> timesMs)
    {
        if (timesMs.Count == 0) return "none";
        var all = timesMs.Order().ToArray();
        double At(double fraction) => all[Math.Min(all.Length - 1, (int)(all.Length * fraction))];
        return string.Create(CultureInfo.InvariantCulture, $"median {At(0.5),6:0.0} ms   p95 {At(0.95),6:0.0} ms   most {all[^1],6:0.0} ms   (n = {all.Length})");
    }
}
