using System.Globalization;
using Slantwise.Desk.Pages.Library;
using Slantwise.Desk.Pages.Tasks.Designer;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Grids;
using Slantwise.Records.Tasks.Designs.Ladders;
using Slantwise.Records.Tasks.Files;
using Slantwise.Records.Tasks.Own;

namespace Slantwise.Surface.Tests.Desk.Tasks.Designer;

public sealed class DesignerStateTests
{
    private static readonly TaskDesign OneFoot = LibraryShelf.Find("one-foot-balance", CultureInfo.GetCultureInfo("en"))!.Design;

    private static DesignerState Of(TaskDesign design) => new(design, "en", Guid.CreateVersion7);

    [Fact]
    public void Rows_TaskOfTheLibrary_StartFromItsOwnFactorsAndLevels()
    {
        var state = Of(OneFoot);
        Assert.Equal(LadderKind.SemiClassical, state.Plan!.Kind);
        Assert.Equal(["steadying", "holdS"], state.Chosen);
        // By hand: holds of 5 and 10 s are used, four ways to steady and five levels; four of the five are levels the task has.
        Assert.Equal(4, state.Rows.Count(r => r.Proposed.IsKept));
        Assert.DoesNotContain(state.Rows, r => r.IsOpen);
        Assert.False(state.CanUndo);
    }

    [Fact]
    public void TakeAll_ThenUndo_GoesBackToWhatWasThere()
    {
        var state = Of(OneFoot);
        state.TakeAll();
        Assert.True(state.IsTaken);
        Assert.Equal(5, state.Design.Levels.Count);
        Assert.Equal(5, state.Design.Levels.Select(l => l.Id).Distinct().Count());
        Assert.All(state.Design.Words.Values, w => Assert.Equal(5, w.Levels.Count));
        state.Undo();
        Assert.Equal(DesignFile.Write(OneFoot), DesignFile.Write(state.Design));
        Assert.False(state.CanUndo);
    }

    [Fact]
    public void Take_OneLevel_PutsItWhereTheSuggestionHasItUnderAnIdOfItsOwn()
    {
        var state = Of(OneFoot);
        var row = Assert.Single(state.Rows, r => !r.Proposed.IsKept);
        state.Answer(row, a => a with { Name = "Toes down, long" });
        row = state.Rows.Single(r => r.Name == "Toes down, long");
        state.Take(row);
        Assert.Equal(6, state.Design.Levels.Count);
        Assert.Equal("Toes down, long", state.Words.Levels[1]);
        Assert.Equal(OneFoot.Words["es"].Levels[0], state.Design.Words["es"].Levels[1]);
        Assert.Equal(10, state.Design.Levels[1].Dose.Amount);
        Assert.NotEqual(row.Level.Id, state.Design.Levels[1].Id);
        Assert.Equal(7, state.Design.Levels[1].Id.Version);
        Assert.All(state.Rows, r => Assert.True(r.Proposed.IsKept));
    }

    [Fact]
    public void Rows_MovementThatNobodyDescribed_IsOpenUntilAPictureOrTheTeacherSays()
    {
        var state = Of(OneFoot with { Levels = [], Words = OneFoot.Words.ToDictionary(w => w.Key, w => w.Value with { Levels = [] }) });
        Assert.All(state.Rows, r => Assert.True(r.IsOpen));
        state.Answer(state.Rows[0], a => a with { Demands = [] });
        state.Answer(state.Rows[1], a => a with { Posture = "tripod" });
        Assert.False(state.Rows[0].IsOpen);
        Assert.Null(state.Rows[0].Basis);
        // What the picture shows is said although nobody ticked it.
        Assert.Equal(DemandBasis.Posture, state.Rows[1].Basis);
        Assert.Contains(BodyDemand.HeadWeight, state.Rows[1].Level.Demands);
        Assert.True(state.Rows[2].IsOpen);
    }

    [Fact]
    public void Ask_AnotherKeyFactor_ChangesTheGridsRoleToo()
    {
        var state = Of(OneFoot);
        state.Ask(new LadderPlan(LadderKind.Classical, new LadderSpan("holdS", 0, 2), [], 3));
        Assert.Equal(FactorRole.Key, state.Design.Factors.Single(f => f.Key == "holdS").Role);
        Assert.Single(state.Design.Factors, f => f.Role == FactorRole.Key);
        Assert.Equal([3, 5, 10], state.Rows.Select(r => r.Level.Dose.Amount));
    }

    [Fact]
    public void Change_ValueAddedToTheKeyRow_ComesIntoTheSuggestion()
    {
        var state = Of(OneFoot);
        var said = state.Words.Factors["steadying"].Values.Values;
        state.Change(d => GridEdit.WithValues(d, "steadying", "en", [.. said, "on a cushion"], CultureInfo.InvariantCulture));
        Assert.Equal(4, state.Plan!.Key.Last);
        Assert.Equal("On a cushion", state.Rows[^1].Name);
        Assert.True(state.Rows[^1].IsOpen);
        // The row taken away: the plan goes on with what is left.
        state.Change(d => GridEdit.Remove(d, "steadying"));
        Assert.Equal("holdS", state.Plan!.Key.FactorKey);
        state.Change(d => GridEdit.Remove(d, "holdS"));
        Assert.Null(state.Plan);
        Assert.Empty(state.Rows);
        state.Undo();
        state.Undo();
        Assert.Equal("steadying", state.Plan!.Key.FactorKey);
    }

    [Fact]
    public void TakeForm_AnotherDoseOfALevel_IsOnTheGridThen()
    {
        var state = Of(OneFoot);
        var form = state.Rows[0];
        state.TakeForm(form.Level.Named(form.Name) with { Dose = new Dose(DoseKind.HoldS, 2) });
        Assert.Equal(2, state.Design.Levels[0].Dose.Amount);
        Assert.True(state.Design.IsOnGrid(state.Design.Levels[0]));
        Assert.Equal(form.Name, state.Words.Levels[0]);
    }

    [Fact]
    public void SetMoveRemove_OwnLevels_KeepNamesBesideThem()
    {
        var state = Of(OneFoot);
        state.Move(0, 1);
        Assert.Equal(OneFoot.Words["es"].Levels[0], state.Design.Words["es"].Levels[1]);
        Assert.Equal(OneFoot.Levels[0].Id, state.Design.Levels[1].Id);
        state.Remove(0);
        Assert.Equal(4, state.Words.Levels.Count);
        state.Set(0, state.Design.Levels[0] with { Posture = "tripod" });
        Assert.Contains(BodyDemand.HeadWeight, state.Design.Levels[0].Demands);
        state.Name(0, " Three points ");
        Assert.Equal("Three points", state.Design.ToTask("en", Guid.Empty).Levels[0].Name);
    }

    [Fact]
    public void NewDesign_TaskTypedWithoutAGrid_KeepsItsLevelsUntilTheyAreGivenAPlace()
    {
        var task = OneFoot.ToTask("en", Guid.Empty) with { Id = Guid.CreateVersion7() };
        var state = Of(NewDesign.Of(task, "en"));
        Assert.Equivalent(task, state.Design.ToTask("en", Guid.Empty), strict: true);
        // Holds of 5 and 10 s are all its grid has so far.
        Assert.Equal("holdS", state.Plan!.Key.FactorKey);
        state.Change(d => GridEdit.Add(d, "Arms"));
        state.Change(d => GridEdit.WithValues(d, "arms", "en", ["out", "on hips"], CultureInfo.InvariantCulture));
        Assert.All(state.Design.Levels, l => Assert.False(state.Design.IsOnGrid(l)));
        state.Set(0, state.Design.Levels[0] with { Settings = new Dictionary<string, FactorValue> { ["arms"] = FactorValue.Of("out") } });
        Assert.True(state.Design.IsOnGrid(state.Design.Levels[0]));
        Assert.Empty(Of(NewDesign.Empty(Guid.CreateVersion7(), "en")).Rows);
    }
}
