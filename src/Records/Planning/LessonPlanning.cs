using System.Buffers.Binary;
using Slantwise.Engines.Planning.Blocks;
using Slantwise.Engines.Planning.Practice;
using Slantwise.Engines.Planning.Practice.Changes;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;

namespace Slantwise.Records.Planning;

/// <summary>A lesson's time and mats in numbers: what a plan gives, how it varies, and what would give more. It says nothing of what a pupil should do.</summary>
public sealed record LessonPlanning
{
    /// <summary>The practice planned. Its lesson ends with the last phase of practice; everything beside practice before that counts as talk.</summary>
    public required PracticePlan Plan { get; init; }

    /// <summary>What was tried in place of what lesson, sheet and the usual say.</summary>
    public required PlanningChoice Choice { get; init; }

    /// <summary>What it gives if every turn takes its mean time.</summary>
    public required PracticeOutlook Outlook { get; init; }

    /// <summary>What it gives where people vary.</summary>
    public required PracticeRanges Ranges { get; init; }

    /// <summary>What would give each two tries more.</summary>
    public required MoreTrials More { get; init; }

    /// <summary>What is planned with: the phases, or those assumed, with the talk that is tried.</summary>
    public required IReadOnlyList<LessonSpan> Spans { get; init; }

    /// <summary>Those as blocks, with talk that takes a quarter longer and published values to orient by.</summary>
    public required BlockPlan Blocks { get; init; }

    /// <summary>The seed of the simulated lessons.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Mats the lesson itself plans; none where it plans none.</summary>
    public required int? PlannedMats { get; init; }

    /// <summary>When practice ends, from the begin of the lesson.</summary>
    public required double EndS { get; init; }

    /// <summary>When the last one has finished the planned tries by mean times, from the begin of the lesson; beyond <see cref="EndS"/> by how much longer practice would have to be.</summary>
    public required double LastDoneS { get; init; }

    /// <summary>The same where people vary.</summary>
    public required TimeRange LastDoneRange { get; init; }

    /// <summary>Talk before the end of practice.</summary>
    public required double TalkS { get; init; }

    /// <summary>What to know before relying on it.</summary>
    public required IReadOnlyList<PlanningWarning> Warnings { get; init; }

    /// <summary>Pupils in the largest group at one mat, of those who are at the mats at a time.</summary>
    public int PupilsAMat => (Plan.PupilsAtMats + Plan.MatCount - 1) / Plan.MatCount;

    /// <summary>Why a lesson cannot be planned; none where it can.</summary>
    /// <param name="record">The lesson.</param>
    public static PlanningProblem? ProblemOf(LessonRecord record) => record.Pupils.Count switch
    {
        0 => PlanningProblem.NoPupils,
        > 200 => PlanningProblem.TooManyPupils,
        _ => record.Lesson.Phases.Sum(p => p.DurationMin) > 240 ? PlanningProblem.TooLong : null,
    };

    /// <summary>What lesson, sheet and the usual say, before anything is tried.</summary>
    /// <param name="record">The lesson, with its class.</param>
    /// <param name="sheet">Its sheet; none where none is chosen.</param>
    /// <exception cref="ArgumentException">A lesson that cannot be planned (<see cref="ProblemOf"/>).</exception>
    public static UsualPractice UsualOf(LessonRecord record, SheetContent? sheet)
    {
        if (ProblemOf(record) is { } problem) throw new ArgumentException($"The lesson cannot be planned: {problem}.", nameof(record));
        var clock = new LessonClock(SpansOf(record, PlanningChoice.Usual));
        return new(PlanOf(record.Pupils.Count, MatsOf(record), sheet, PlanningChoice.Usual, clock), clock.InstructionS);
    }

    /// <summary>The choice with which a change is tried.</summary>
    /// <param name="change">One of <see cref="More"/>.</param>
    public PlanningChoice ChoiceOf(PlanChange change)
    {
        var choice = Choice;
        if (change.AddedMats > 0) choice = choice with { MatCount = change.Plan.MatCount, PupilsAMat = null };
        // Fewer are at the mats at a time then: mats stay as many as they are.
        if (change.AddedSideStations > 0) choice = choice with { SideStationCount = change.Plan.SideStationCount, MatCount = change.Plan.MatCount, PupilsAMat = null };
        if (change.IsObserverNew) choice = choice with { RecordedBy = change.Plan.RecordedBy };
        if (change.AddedTrialsATurn > 0) choice = choice with { TrialsATurn = change.Plan.TrialsATurn };
        if (change.CutSets > 0) choice = choice with { SetCount = change.Plan.SetCount, TrialCount = change.Plan.TrialsASet };
        return change.CutTalkS > 0 ? choice with { TalkMin = (TalkS - change.CutTalkS) / 60 } : choice;
    }

    /// <summary>Plans a lesson.</summary>
    /// <param name="record">The lesson, with its class.</param>
    /// <param name="sheet">Its sheet as it was frozen, or as it stands; none where none is chosen.</param>
    /// <param name="choice">What to try in place of what the lesson says.</param>
    /// <exception cref="ArgumentException">A lesson that cannot be planned (<see cref="ProblemOf"/>), or a choice outside its ranges.</exception>
    public static LessonPlanning Of(LessonRecord record, SheetContent? sheet, PlanningChoice choice)
    {
        if (ProblemOf(record) is { } problem) throw new ArgumentException($"The lesson cannot be planned: {problem}.", nameof(record));
        if (!choice.IsWithin) throw new ArgumentException("Something is tried that lies outside its range.", nameof(choice));

        var spans = SpansOf(record, choice);
        var clock = new LessonClock(spans);
        var plannedMats = MatsOf(record);
        var plan = PlanOf(record.Pupils.Count, plannedMats, sheet, choice, clock);
        var seed = choice.Seed ?? SeedOf(record.Lesson.Id);
        var outlook = PracticeOutlook.Of(plan);
        var ranges = PracticeRanges.Of(plan, TimeSpread.Usual, PlanningDefaults.RunCount, seed);
        double LessonTimeS(double planTimeS) => clock.AtS(planTimeS - plan.TalkS);

        // Pauses between sets are neither waiting nor practice at a mat: what waits in a phase is the share of the time at the mats.
        var practiceS = plan.LessonS - plan.TalkS;
        var waitingFraction = practiceS > 0 ? outlook.WaitingFraction * Math.Max(0, plan.AtMatsS) / practiceS : 0;
        var blocks = spans.Select(s => new PlannedBlock((TimeCategory)s.Kind, s.DurationS, s.Kind == PhaseKind.Activity ? waitingFraction : 0)).ToList();
        return new LessonPlanning
        {
            Plan = plan,
            Choice = choice,
            Outlook = outlook,
            Ranges = ranges,
            More = MoreTrials.Of(plan, LimitsOf(plan, clock), PlanningDefaults.MoreTrials),
            Spans = spans,
            Blocks = BlockPlan.Of(blocks, clock.TotalS, PlanningDefaults.TalkOverrunFraction, TimeOrientation.Values),
            Seed = seed,
            PlannedMats = plannedMats,
            EndS = clock.EndS,
            LastDoneS = LessonTimeS(outlook.LastDoneS),
            LastDoneRange = new(LessonTimeS(ranges.LastDoneS.LowS), LessonTimeS(ranges.LastDoneS.MedianS), LessonTimeS(ranges.LastDoneS.HighS)),
            TalkS = clock.InstructionS,
            Warnings = [.. WarningsOf(record, sheet, choice, plan, outlook, clock)],
        };
    }

    private static IReadOnlyList<LessonSpan> SpansOf(LessonRecord record, PlanningChoice choice) =>
        LessonSpan.Of(record.Lesson.Phases.Count > 0 ? record.Lesson.Phases : PlanningDefaults.Phases, choice.TalkMin);

    private static int? MatsOf(LessonRecord record) => record.Lesson.MatCount is > 0 and var mats ? mats : null;

    private static PracticePlan PlanOf(int pupils, int? plannedMats, SheetContent? sheet, PlanningChoice choice, LessonClock clock)
    {
        var stations = choice.SideStationCount ?? 0;
        // Who is at a station shares no mat meanwhile.
        var atMats = (pupils + stations) / (stations + 1);
        var mats = choice.PupilsAMat is { } each ? (atMats + each - 1) / each
            : choice.MatCount ?? plannedMats ?? (atMats + PlanningDefaults.PupilsAMat - 1) / PlanningDefaults.PupilsAMat;
        return new PracticePlan
        {
            PupilCount = pupils,
            MatCount = Math.Min(mats, PlanningChoice.MostMats),
            PerformersAMat = choice.PerformersAMat ?? 1,
            PartnersATurn = choice.PartnersATurn ?? 0,
            ObserversATurn = choice.ObserversATurn ?? 0,
            LessonS = clock.EndS,
            TalkS = clock.BesideS,
            SideStationCount = stations,
            TransitionS = choice.ChangeS ?? PlanningDefaults.ChangeS,
            SetCount = choice.SetCount ?? (sheet is null ? PlanningDefaults.SetCount : Math.Clamp(Math.Max(1, sheet.Tasks.Count) * sheet.SetCount, 1, PlanningChoice.MostSets)),
            TrialsASet = choice.TrialCount ?? (sheet is null ? PlanningDefaults.TrialCount : Math.Clamp(sheet.TrialCount, 1, PlanningChoice.MostTrials)),
            TrialsATurn = choice.TrialsATurn ?? 1,
            BetweenSetsS = choice.BetweenSetsS ?? PlanningDefaults.BetweenSetsS,
            ActionS = choice.ActionS ?? (sheet is null ? null : SheetActionTime.MeanS(sheet)) ?? PlanningDefaults.ActionS,
            EnterS = PlanningDefaults.EnterS,
            LeaveS = PlanningDefaults.LeaveS,
            AgainS = PlanningDefaults.AgainS,
            RestS = choice.RestS ?? PlanningDefaults.RestS,
            RecordS = choice.RecordS ?? PlanningDefaults.RecordS,
            RecordedBy = choice.RecordedBy ?? Recording.PerformerBeside,
        };
    }

    private static ChangeLimits LimitsOf(PracticePlan plan, LessonClock clock) => new(
        Math.Max(plan.MatCount, Math.Min(plan.PupilCount, PlanningChoice.MostMats)), plan.TalkS - (clock.HasPractice ? clock.InstructionS * PlanningDefaults.TalkCutFraction : 0), 1,
        Math.Max(PlanningDefaults.MostSideStations, plan.SideStationCount),
        Math.Max(plan.TrialsATurn, Math.Min(plan.TrialsASet, PlanningDefaults.MostTrialsATurn)), MayObserverRecord: true);

    private static IEnumerable<PlanningWarning> WarningsOf(
        LessonRecord record, SheetContent? sheet, PlanningChoice choice, PracticePlan plan, PracticeOutlook outlook, LessonClock clock)
    {
        if (record.Lesson.MatCount is not > 0 && choice is { MatCount: null, PupilsAMat: null }) yield return PlanningWarning.NoMatsPlanned;
        if (record.Lesson.Phases.Count == 0) yield return PlanningWarning.NoPhasesPlanned;
        if (sheet is null && choice is not { SetCount: not null, TrialCount: not null, ActionS: not null }) yield return PlanningWarning.NoSheet;
        if (record.Lesson.MatCount is > 0 and var planned && plan.MatCount > planned) yield return PlanningWarning.MoreMatsThanPlanned;
        if (plan.MatCount > plan.PupilsAtMats) yield return PlanningWarning.EmptyMats;
        else if (outlook.Cautions.HasFlag(PracticeCautions.EmptyPlaces)) yield return PlanningWarning.EmptyPlaces;
        if (outlook.Cautions.HasFlag(PracticeCautions.TooFewForRoles)) yield return PlanningWarning.TooFewForRoles;
        if (outlook.Cautions.HasFlag(PracticeCautions.NobodyToRecord)) yield return PlanningWarning.NobodyToRecord;
        if (outlook.Cautions.HasFlag(PracticeCautions.NoTime))
        {
            yield return PlanningWarning.NoPractice;
            yield break;
        }
        if (outlook.Cautions.HasFlag(PracticeCautions.SomebodyWithout)) yield return PlanningWarning.SomebodyWithout;
        if (outlook.LeftS < 0) yield return PlanningWarning.LastAfterEnd;
        else if (clock.InstructionS * PlanningDefaults.TalkOverrunFraction > outlook.LeftS) yield return PlanningWarning.TalkOverruns;
    }

    // The random end of the id, short enough to be typed.
    private static ulong SeedOf(Guid lessonId) => BinaryPrimitives.ReadUInt32BigEndian(lessonId.ToByteArray().AsSpan(12));
}
