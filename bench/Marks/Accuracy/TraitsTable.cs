using System.Reflection;
using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks;

namespace Slantwise.Bench.Accuracy;

/// <summary>Every field's truth and traits as plain text, to look at with any program.</summary>
internal static class TraitsTable
{
    private static readonly PropertyInfo[] Traits = [.. typeof(MarkTraits).GetProperties().Where(p => p.PropertyType == typeof(double))];

    public static void Write(string path, PageSet set, ulong first, int count, int threads)
    {
        using var file = new StreamWriter(path);
        file.WriteLine($"seed,fault,pen,key,style,trouble,marked,open,{string.Join(',', Traits.Select(t => t.Name))}");
        set.Each(first, count, threads, (seed, fault) =>
        {
            var page = SimulatedPage.Of(seed, fault, set.Photo, set.Hand, sheet: set.SheetOf(seed));
            var read = page.Traits();
            lock (file)
                for (var i = 0; i < read.Fields.Count; i++)
                {
                    var truth = page.Truths[i];
                    file.WriteLine(FormattableString.Invariant($"{seed},{fault.Name},{page.Pen.Name.Replace(",", "")},{read.Fields[i].Key},{truth.Style},{truth.Trouble},{(truth.IsMarked ? 1 : 0)},{(truth.IsOpen ? 1 : 0)},")
                        + string.Join(',', Traits.Select(t => FormattableString.Invariant($"{t.GetValue(read.Fields[i]):0.#####}"))));
                }
        });
    }
}
