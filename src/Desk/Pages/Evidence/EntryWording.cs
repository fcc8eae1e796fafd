using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>Says what an entry says, in words a colleague could read out.</summary>
/// <param name="record">The lesson the entries belong to.</param>
public sealed class EntryWording(LessonRecord record)
{
    private readonly Dictionary<Guid, Entry> _byId = record.Entries.ToDictionary(entry => entry.Id);
    private readonly Dictionary<Guid, string> _labels = record.Pupils.ToDictionary(pupil => pupil.Id, pupil => pupil.Label);

    /// <summary>Whom the entry is about.</summary>
    public string Who(Entry entry) => entry.PupilId is not { } pupil
        ? EvidenceWords.Say("WholeLesson")
        : _labels.GetValueOrDefault(pupil) ?? EvidenceWords.Say("PupilWhoLeft");

    /// <summary>Which task and set the entry is about; empty where none is meant.</summary>
    public string Where(Entry entry)
    {
        var task = TaskOf(entry)?.Name ?? (entry.TaskId is null ? "" : EvidenceWords.Say("TaskOffSheet"));
        return entry.SetNumber is { } set ? EvidenceWords.Say("TaskAndSet", task, set) : task;
    }

    /// <summary>What the entry says.</summary>
    public string What(Entry entry) => entry.Fact switch
    {
        Presence { IsPresent: true } => EvidenceWords.Say("FactPresent"),
        Presence => EvidenceWords.Say("FactAbsent"),
        Choice choice => ChoiceWords(entry, choice),
        Prediction { HoldS: { } holdS } => EvidenceWords.Say("FactPredictedHold", Seconds(holdS)),
        Prediction prediction => EvidenceWords.Say("FactPredictedCount", prediction.SuccessCount),
        Trial { HeldS: { } heldS } trial => EvidenceWords.Say(trial.IsSuccess ? "FactTrialHeld" : "FactTrialHeldShort", entry.TrialNumber, Seconds(heldS)),
        Trial trial => EvidenceWords.Say(trial.IsSuccess ? "FactTrialReached" : "FactTrialMissed", entry.TrialNumber),
        CueTick tick => EvidenceWords.Say(tick.IsTicked ? "FactCueTicked" : "FactCueOpen", tick.CueNumber, Cue(entry, tick.CueNumber)),
        TeacherCheck check => EvidenceWords.Say(check.IsMet ? "FactCheckMet" : "FactCheckNotMet", check.CueNumber, Cue(entry, check.CueNumber)),
        Decision decision => EvidenceWords.Say(decision.Reason.Length > 0 ? "FactDecisionWithReason" : "FactDecision", EvidenceWords.Say(decision.Next.ToString()), decision.Reason),
        Visit visit => EvidenceWords.Say("FactVisit", EvidenceWords.Say("Topic" + visit.Topic), EvidenceWords.Say("Form" + visit.Form), visit.Note),
        Note note => EvidenceWords.Say("FactNote", note.Text),
        EngagementScan scan => EvidenceWords.Say("FactScan", scan.EngagedCount, scan.PresentCount),
        PhaseMark mark => EvidenceWords.Say("FactPhase", EvidenceWords.Say("Phase" + mark.Kind)),
        _ => entry.SupersedesId is { } id && _byId.TryGetValue(id, out var before)
            ? EvidenceWords.Say("FactTakenBack", What(before))
            : EvidenceWords.Say("FactTakenBackUnknown"),
    };

    private string ChoiceWords(Entry entry, Choice choice)
    {
        var levels = TaskOf(entry)?.Levels ?? [];
        var number = levels.TakeWhile(level => level.Id != choice.LevelId).Count() + 1;
        return number <= levels.Count
            ? EvidenceWords.Say("FactChoice", EvidenceWords.Say("LevelNamed", number, levels[number - 1].Name, EvidenceText.Of(levels[number - 1].Dose)))
            : EvidenceWords.Say("FactChoice", EvidenceWords.Say("LevelOffSheet"));
    }

    private SheetTask? TaskOf(Entry entry) => record.Sheet?.Content.Tasks.FirstOrDefault(task => task.TaskId == entry.TaskId);

    private string Cue(Entry entry, int cueNumber) => TaskOf(entry)?.Cues.ElementAtOrDefault(cueNumber - 1) ?? "";

    private static string Seconds(double seconds) => seconds.ToString("0.##", CultureInfo.CurrentCulture);
}
