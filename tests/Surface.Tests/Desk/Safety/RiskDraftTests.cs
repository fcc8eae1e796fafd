using Slantwise.Desk.Pages.Safety;
using Slantwise.Records.Safety;

namespace Slantwise.Surface.Tests.Desk.Safety;

public sealed class RiskDraftTests
{
    private static readonly Guid Task = new(1, 0, 0, new byte[8]);
    private static readonly Guid Other = new(2, 0, 0, new byte[8]);
    private static readonly IReadOnlyList<string> Proposed = ["Mats flat.", "One at a time."];

    [Fact]
    public void ToNotes_Untouched_IsWhatWasKept()
    {
        var notes = new RiskNotes { Tasks = [new(Task, RiskLevel.High, ["Mine."])], EquipmentChecks = ["Door."], Notes = "n", ShowsNames = true };
        var again = new RiskDraft(notes, [Task]).ToNotes(_ => Proposed);
        Assert.Equal((notes.Notes, notes.ShowsNames), (again.Notes, again.ShowsNames));
        Assert.Equal(notes.EquipmentChecks, again.EquipmentChecks);
        Assert.Equal((Task, (RiskLevel?)RiskLevel.High), (again.Tasks[0].TaskId, again.Tasks[0].Level));
        Assert.Equal(["Mine."], again.Tasks[0].Controls);
    }

    [Fact]
    public void ToNotes_LinesThatSayTheProposal_AreNotTheTeachers()
    {
        var draft = new RiskDraft(new RiskNotes(), [Task]);
        draft.Tasks[0].Take(Proposed);
        Assert.Empty(draft.ToNotes(_ => Proposed).Tasks);
        draft.Tasks[0].Controls![1].Text = " Two at a time. ";
        draft.Tasks[0].Controls!.Add(new LineDraft("  "));
        Assert.Equal(["Mats flat.", "Two at a time."], Assert.Single(draft.ToNotes(_ => Proposed).Tasks).Controls);
        draft.Tasks[0].Controls = null;
        Assert.Empty(draft.ToNotes(_ => Proposed).Tasks);
    }

    [Fact]
    public void ToNotes_TaskThatIsNotOnTheSheetToday_IsKept()
    {
        var notes = new RiskNotes { Tasks = [new(Other, RiskLevel.Low, ["Kept."])] };
        var again = new RiskDraft(notes, [Task]).ToNotes(_ => Proposed);
        Assert.Equal(Other, Assert.Single(again.Tasks).TaskId);
    }
}
