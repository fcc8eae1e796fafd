using System.Diagnostics;
using System.Globalization;
using Slantwise.Bench.Live;
using Slantwise.Records.Evidence.Live;

// Types a lesson into a class of 30, entry by entry, and times what an entry sets off: reading it, fitting the class again, one pupil's chances and
// questions. Entries that leave the model as it is, such as a cue's tick, are counted and not timed. The first pass warms up.
foreach (var (name, lessons) in new[] { ("first lesson", 1), ("sixth lesson", 6) })
{
    var (lesson, before, entries) = InventedLessons.Of(pupils: 30, lessons);
    var levels = lesson.Sheet!.Content.Tasks.SelectMany(t => t.Levels).ToList();
    for (var pass = 0; pass < 2; pass++)
    {
        var times = new (string Part, List<double> TimesMs)[] { ("read", []), ("fit", []), ("chances", []), ("questions", []), ("an entry", []) };
        var live = LiveClass.Of(lesson, before);
        foreach (var entry in entries)
        {
            var (old, pupil) = (live.Chances, entry.PupilId ?? lesson.Pupils[0].Id);
            double[] parts =
            [
                TimedMs(() => live.Take([entry])),
                TimedMs(() => _ = live.Chances),
                TimedMs(() => live.Chances.Chances(pupil, levels, live.Now)),
                TimedMs(() => live.QuestionsOf(pupil)),
            ];
            if (live.Chances == old) continue;
            for (var part = 0; part < parts.Length; part++) times[part].TimesMs.Add(parts[part]);
            times[^1].TimesMs.Add(parts.Sum());
        }
        if (pass == 0) continue;
        Say($"{name}: {entries.Count} entries, {times[0].TimesMs.Count} of them seen by the model, {live.Chances.TrialCount} tries in the end, {levels.Count} levels");
        foreach (var (part, all) in times)
        {
            all.Sort();
            Say($"  {part,-10} median {all[all.Count / 2],7:0.000} ms   p95 {all[all.Count * 95 / 100],7:0.000} ms   most {all[^1],7:0.000} ms");
        }
        Say($"  in full {TimedMs(() => live.Settle()),18:0.0} ms");
    }
}

static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

static double TimedMs(Action work)
{
    var watch = Stopwatch.StartNew();
    work();
    return watch.Elapsed.TotalMilliseconds;
}
