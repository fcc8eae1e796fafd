using Slantwise.Records.Schools;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Grids;
using Slantwise.Records.Tasks.Files;
using Slantwise.Records.Tasks.Own;
using Slantwise.Records.Tests.Stores;
using static Slantwise.Records.Tests.Tasks.Designs.Ladders.LadderProposalTests;

namespace Slantwise.Records.Tests.Tasks.Own;

public sealed class OwnTaskTests
{
    private static readonly TaskDesign OneFoot = Library("one-foot-balance");

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void Of_TaskAsItIs_ChangesNothing(string language)
    {
        foreach (var design in TaskLibrary.Designs)
        {
            var step = DesignInStep.Of(design, design.ToTask(language, Guid.Empty));
            Assert.Equal(DesignFile.Write(design), DesignFile.Write(step.Design));
            Assert.Empty(step.Notes);
        }
    }

    [Fact]
    public void Of_LevelAddedByHand_StaysAndHasNoPlaceOnTheGrid()
    {
        var task = OneFoot.ToTask("es", Guid.Empty);
        var added = new Level { Id = Guid.CreateVersion7(), Name = "Con un saquito", Dose = new Dose(DoseKind.HoldS, 7), Demands = [BodyDemand.Impact] };
        task = task with { Levels = [task.Levels[0], added, .. task.Levels.Skip(1)], Name = "Grullas" };
        var (design, notes) = DesignInStep.Of(OneFoot, task);
        Assert.Equal(["GridDoseAdded", "GridLevelOff"], notes.Select(n => n.Key));
        Assert.Equal([2, 7m], notes[0].Arguments);
        Assert.Equal([2, "Con un saquito"], notes[1].Arguments);
        Assert.False(design.IsOnGrid(design.Levels[1]));
        Assert.Equal(5, design.Levels.Count(design.IsOnGrid));
        // Read back as a task it is the edited one; the other language keeps its words, and has a name for the new level too.
        Assert.Equivalent(task, design.ToTask("es", Guid.Empty), strict: true);
        Assert.Equal("One-foot balance", design.Words["en"].Name);
        Assert.Equal([OneFoot.Words["en"].Levels[0], "Con un saquito", .. OneFoot.Words["en"].Levels.Skip(1)], design.Words["en"].Levels);
    }

    [Fact]
    public void Of_LevelsTakenOutAndMoved_FollowById()
    {
        var task = OneFoot.ToTask("en", Guid.Empty);
        task = task with { Levels = [task.Levels[4], task.Levels[0]] };
        var (design, notes) = DesignInStep.Of(OneFoot, task);
        Assert.Empty(notes);
        Assert.Equal([OneFoot.Levels[4].Settings["steadying"], OneFoot.Levels[0].Settings["steadying"]], design.Levels.Select(l => l.Settings["steadying"]));
        Assert.Equal([OneFoot.Words["es"].Levels[4], OneFoot.Words["es"].Levels[0]], design.Words["es"].Levels);
    }

    [Fact]
    public void ToFile_TaskWithALevelOffTheGrid_ReadsBackTheSameAndIsNotRefused()
    {
        var task = OneFoot.ToTask("en", Guid.Empty);
        task = task with { Levels = [.. task.Levels, new Level { Id = Guid.CreateVersion7(), Name = "On a cushion", Dose = new Dose(DoseKind.RepetitionsCount, 3) }] };
        var own = new OwnTask(task, DesignInStep.Of(OneFoot, task).Design);
        var reading = DesignFile.Read("a.json", own.ToFile());
        Assert.Equal(own.ToFile(), DesignFile.Write(reading.Design!));
        Assert.Equivalent(task, reading.Design!.ToTask("en", Guid.Empty), strict: true);
        Assert.DoesNotContain(Records.Tasks.Checks.DesignCheck.Of([reading]), f => f.IsRefused);
    }

    [Fact]
    public void ToFile_TaskWithoutAGrid_IsTheShortForm()
    {
        var task = OneFoot.ToTask("en", Guid.Empty) with { Id = Guid.CreateVersion7() };
        var reading = TaskFile.Read("a.json", new OwnTask(task, null).ToFile(), Guid.Empty);
        Assert.Equivalent(task, reading.Task, strict: true);
    }

    [Fact]
    public void ToFile_TaskDesignedFromNothing_ReadsBackTheSame()
    {
        var task = new MovementTask { SchoolId = Guid.Empty, Id = Guid.CreateVersion7(), Name = "Stork", Levels = [new Level { Id = Guid.CreateVersion7(), Name = "On a line", Dose = new Dose(DoseKind.TargetSizeM, 0.3m) }] };
        var design = NewDesign.Of(task, "es");
        design = GridEdit.WithValues(GridEdit.Add(design, "Árbol"), "arbol", "es", ["bajo", "alto"], System.Globalization.CultureInfo.InvariantCulture);
        var reading = DesignFile.Read("a.json", new OwnTask(task, design).ToFile());
        Assert.Empty(reading.Findings);
        Assert.Equal(DesignFile.Write(design), DesignFile.Write(reading.Design!));
        Assert.Equivalent(task, TaskFile.Read("a.json", DesignFile.Write(design), Guid.Empty, "es").Task, strict: true);
    }

    [Theory]
    [InlineData("One-foot balance", "one-foot-balance.json")]
    [InlineData("Équilibre à deux: «grullas»!", "equilibre-a-deux-grullas.json")]
    [InlineData("平衡", "task.json")]
    public void TaskFileName_OfAName_IsOneThatEverySystemTakes(string name, string file) => Assert.Equal(file, TaskFileName.Of(name));

    [Theory, EachDatabase]
    public async Task Save_EditedTask_TakesItsDesignAlong(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var sample = new SampleSchool();
        await sample.SaveToAsync(test.Store);
        var task = OneFoot.ToTask("en", sample.Id);
        await OwnTask.SaveAsync(test.Store, task, OneFoot);
        var edited = task with { Levels = [.. task.Levels.Skip(1)], Purpose = "Stand." };
        await OwnTask.SaveAsync(test.Store, edited);
        var kept = await test.Store.FindTaskDesignAsync(sample.Id, task.Id);
        Assert.Equal(4, kept!.Design.Levels.Count);
        Assert.Equal("Stand.", kept.Design.Words["en"].Purpose);
        // A task typed by hand stays without a design.
        await OwnTask.SaveAsync(test.Store, sample.Task with { Purpose = "Changed." });
        Assert.Null((await OwnTask.FindAsync(test.Store, sample.Id, sample.Task.Id))!.Design);
        Assert.Equal(2, (await OwnTask.ListAsync(test.Store, sample.Id)).Count);
    }

    [Theory, EachDatabase]
    public async Task Find_TaskOfTheLibraryKeptBeforeDesignsWere_HasTheLibrarysGrid(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var sample = new SampleSchool();
        await sample.SaveToAsync(test.Store);
        var task = OneFoot.ToTask("es", sample.Id) with { Cues = ["Mi pie empuja."] };
        await test.Store.SaveTaskAsync(task);
        var own = await OwnTask.FindAsync(test.Store, sample.Id, task.Id);
        Assert.Equal(OneFoot.Factors.Count, own!.Design!.Factors.Count);
        Assert.Equivalent(task, own.Design.ToTask("es", sample.Id), strict: true);
        Assert.Null(await OwnTask.FindAsync(test.Store, sample.Id, Guid.CreateVersion7()));
    }
}
