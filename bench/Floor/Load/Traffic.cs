using Slantwise.Records.Entries;
using Slantwise.Records.Sheets;

namespace Slantwise.Bench.Floor.Load;

/// <summary>Pupils who do one set after another, each from a moment of their own: choice, prediction, five trials, three cues, decision in three minutes.</summary>
internal static class Traffic
{
    /// <summary>Entries of a set: what a set of the sheet in use asks for.</summary>
    public const int EntriesPerSet = 11;

    private const double SetS = 180;
    private const int TrialsPerSet = 5;
    private const int CuesPerSet = 3;

    // A page sends what was made within a second of the first of it, in one request.
    private const double SoonS = 1;

    /// <summary>Everything a tablet sends, in the order of sending.</summary>
    public static IEnumerable<PlannedBatch> Of(Tablet tablet, SheetContent sheet, double untilS, double rateFactor, Random random)
    {
        var facts = tablet.PupilIds.SelectMany(pupil => Pupil(pupil, sheet, untilS, rateFactor, random)).Where(f => f.AtS >= 0 && f.AtS < untilS).OrderBy(f => f.AtS).ToList();
        for (var i = 0; i < facts.Count;)
        {
            var due = facts[i].AtS + SoonS;
            var together = facts.Skip(i).TakeWhile(f => f.AtS <= due).ToList();
            i += together.Count;
            yield return new PlannedBatch(due, tablet, together);
        }
    }

    private static IEnumerable<PlannedFact> Pupil(Guid pupil, SheetContent sheet, double untilS, double rateFactor, Random random)
    {
        var task = sheet.Tasks[0];
        var set = 0;
        // The first set is under way already, so that as many write in the first second as in any other.
        for (var startS = -random.NextDouble() * SetS / rateFactor; startS < untilS; startS += SetS / rateFactor)
        {
            var number = (set++ % sheet.SetCount) + 1;
            PlannedFact At(double s, EntryFact fact, int? trial = null) => new(startS + (s / rateFactor), pupil, task.TaskId, number, trial, fact);
            var (next, predicted) = ((NextLevel)random.Next(1, 4), random.Next(TrialsPerSet + 1));
            yield return At(0, new Choice(task.Levels[random.Next(task.Levels.Count)].Id));
            yield return At(3 + (random.NextDouble() * 4), new Prediction(SuccessCount: predicted));
            for (var trial = 1; trial <= TrialsPerSet; trial++) yield return At(15 + (25 * (trial - 1)) + (random.NextDouble() * 12), new Trial(random.Next(2) == 0), trial);
            for (var cue = 1; cue <= CuesPerSet; cue++) yield return At(140 + (1.2 * cue), new CueTick(cue, random.Next(2) == 0));
            yield return At(150 + (random.NextDouble() * 10), new Decision(next, "I want it calmer first"));
        }
    }
}
