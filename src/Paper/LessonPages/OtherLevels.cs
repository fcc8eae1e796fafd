using Slantwise.Paper.Sheets;
using Slantwise.Paper.Words;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;

namespace Slantwise.Paper.LessonPages;

/// <summary>How many pupils' own sheets have other levels than the class's, and who, if that was asked for. Never why: no reason is kept.</summary>
internal sealed class OtherLevels(LessonRecord record, PaperOptions options, CardWords words, PaperWords paperWords)
{
    public IEnumerable<string> Sentences(bool hasNames)
    {
        var others = Labels.InOrder(record.Pupils, options.Language).Select(p => (Pupil: p, Own: Own(p).ToList())).Where(p => p.Own.Count > 0).ToList();
        if (others.Count == 0)
        {
            yield return words["OthersNone"];
            yield break;
        }
        yield return words.Count("Others", others.Count);
        if (!options.NamesOtherLevels || !hasNames) yield break;
        var shared = others.GroupBy(o => First(o.Pupil)).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet();
        yield return string.Join("; ", others.Select(o =>
            $"{First(o.Pupil)}{(shared.Contains(First(o.Pupil)) ? $" ({o.Pupil.Code})" : "")} {string.Join(", ", o.Own)}")) + ".";
    }

    private static string First(Pupil pupil) => Labels.Of(pupil).Split(' ')[0];

    // A task that offers this pupil other levels: which of the class's are the pupil's own 1, 2, 3.
    private IEnumerable<string> Own(Pupil pupil)
    {
        var tasks = record.Sheet!.Content.Tasks;
        for (var i = 0; i < tasks.Count; i++)
        {
            var ofClass = OfferedLevel.Of(tasks[i], record, null).Select(l => l.Number).ToList();
            var own = OfferedLevel.Of(tasks[i], record, pupil);
            if (own.Count == ofClass.Count) continue;
            var numbers = own.Count == 0 ? paperWords["NoneOffered"] : string.Join(' ', own.Select(l => ofClass.IndexOf(l.Number) + 1));
            yield return tasks.Count == 1 ? numbers : paperWords.Of("OfferedTask", i + 1, numbers);
        }
    }
}
