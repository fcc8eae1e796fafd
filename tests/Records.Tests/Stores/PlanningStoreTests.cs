using Slantwise.Engines.Planning.Groups;
using Slantwise.Records.Groups;
using Slantwise.Records.Halls;
using Slantwise.Records.Safety;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;
using Slantwise.Records.Units;
using static Slantwise.Records.Tests.Stores.RoundTripTests;

namespace Slantwise.Records.Tests.Stores;

public sealed class PlanningStoreTests
{
    private static SchoolHall HallOf(SampleSchool sample) => new()
    {
        SchoolId = sample.Id, Id = SampleSchool.IdOf(901), Name = "Large hall", WidthM = 22.5, DepthM = 12, Things = [new("stage", 0, 10, 22.5, 2, true), new("", 3, 3, 0.4, 0.4, false)],
    };

    private static LessonSpace SpaceOf(SampleSchool sample) => new()
    {
        SchoolId = sample.Id, LessonId = sample.Lesson.Id, HallId = HallOf(sample).Id,
        Layout = new()
        {
            MatLengthM = 2, MatWidthM = 1.25, ClearM = 1.5, WallClearM = 1, Mats = [new(3, 2.5, true, 1.7, 1), new(6, 2.5, false, 0, null)], TeacherXM = 1, TeacherYM = 0.5,
            Stations = [new("Rolls", sample.Task.Id), new("Ropes", null)], StationMin = 6,
        },
    };

    private static LessonGroups GroupsOf(SampleSchool sample, params int[] pupils) => new()
    {
        SchoolId = sample.Id, LessonId = sample.Lesson.Id,
        Plan = new()
        {
            Groups = [new([.. pupils.Select(p => sample.Pupils[p].Id)], [sample.Pupils[1].Id], [1, 2]), new([], [], [])],
            Goal = GroupGoal.Mix, NeedsSupporter = true, Seed = 417,
            Wishes = [.. pupils.Where(p => p != 1).Select(p => new PupilWish(true, sample.Pupils[1].Id, sample.Pupils[p].Id))],
            Known = [.. pupils.Select(p => new KnownExperience(sample.Pupils[p].Id, PupilExperience.Some, p == 1))],
        },
    };

    private static Incident IncidentOf(SampleSchool sample, params int[] pupils) => new()
    {
        SchoolId = sample.Id, Id = SampleSchool.IdOf(911), Kind = IncidentKind.NearMiss, Day = sample.Lesson.Date, MinuteOfDay = 9 * 60 + 40, LessonId = sample.Lesson.Id,
        TaskId = sample.Task.Id, Place = "mat 3", Happened = "Two rolled on one mat.", Done = "Stopped, asked.", Changed = "One mat each.",
        PupilIds = [.. pupils.Select(p => sample.Pupils[p].Id)], WrittenAt = new(2026, 9, 14, 10, 0, 0, TimeSpan.Zero),
    };

    private static TeachingUnit UnitOf(SampleSchool sample)
    {
        var outcome = new Outcome(SampleSchool.IdOf(921), "PE.7.2", "", "A framework");
        return new()
        {
            SchoolId = sample.Id, Id = SampleSchool.IdOf(920), ClassId = sample.Class.Id, Name = "Balance", FirstDay = new DateOnly(2026, 9, 14),
            Content = new() { Outcomes = [outcome], Lessons = [new("First", sample.Lesson.Id, [new(sample.Task.Id, [outcome.Id])], ["Stand still"]), new("", null, [], [])], Notes = "Wall needed" },
        };
    }

    private static PupilAdaptation AdaptationOf(SampleSchool sample, int pupil) => new()
    {
        SchoolId = sample.Id, PupilId = sample.Pupils[pupil].Id, TaskId = sample.Task.Id, Text = "One hand on the wall",
    };

    [Theory, EachDatabase]
    public async Task Save_WhatALessonIsPlannedWith_ComesBackAsSavedLast(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        Assert.Null(await store.FindLessonSpaceAsync(sample.Id, sample.Lesson.Id));
        Assert.Null(await store.FindLessonRiskAsync(sample.Id, sample.Lesson.Id));
        Assert.Empty(await store.ListUnitsAsync(sample.Id));
        var risk = new LessonRisk
        {
            SchoolId = sample.Id, LessonId = sample.Lesson.Id,
            Notes = new() { Tasks = [new(sample.Task.Id, RiskLevel.Medium, ["Mats away from the wall"])], EquipmentChecks = ["Seams closed"], Notes = "Hot day", ShowsNames = true },
        };
        var lesson = sample.Lesson with { Aims = ["Stand still"], Demonstration = ["Show the wide base"], Practice = new() { MatCount = 6, RestS = 20 } };
        var school = sample.School with
        {
            EmergencyNotes = "Box: office",
            Policy = sample.School.Policy with { Spotting = PolicyChoice.Planned, HeadHoldCapS = 3, HeadConditions = [SafetyCondition.ParentsTold], ReturnSteps = [new(BodyDemand.Roll, 28)] },
        };
        await store.SaveHallAsync(HallOf(sample) with { Name = "Old name" });
        await store.SaveHallAsync(HallOf(sample));
        await store.SaveLessonSpaceAsync(SpaceOf(sample));
        await store.SaveLessonRiskAsync(risk);
        await store.SaveLessonGroupsAsync(GroupsOf(sample, 1));
        await store.SaveLessonGroupsAsync(GroupsOf(sample, 0, 1, 2));
        await store.SaveIncidentAsync(IncidentOf(sample, 0));
        await store.SaveUnitAsync(UnitOf(sample));
        await store.SaveAdaptationAsync(AdaptationOf(sample, 0) with { Text = "Seated" });
        await store.SaveAdaptationAsync(AdaptationOf(sample, 0));
        await store.SaveLessonAsync(lesson);
        await store.SaveSchoolAsync(school);

        AssertSame([HallOf(sample)], await store.ListHallsAsync(sample.Id));
        AssertSame(SpaceOf(sample), await store.FindLessonSpaceAsync(sample.Id, sample.Lesson.Id));
        AssertSame(risk, await store.FindLessonRiskAsync(sample.Id, sample.Lesson.Id));
        AssertSame([GroupsOf(sample, 0, 1, 2)], await store.ListLessonGroupsAsync(sample.Id));
        AssertSame([IncidentOf(sample, 0)], await store.ListIncidentsAsync(sample.Id));
        AssertSame([UnitOf(sample)], await store.ListUnitsAsync(sample.Id));
        AssertSame(UnitOf(sample), await store.FindUnitAsync(sample.Id, UnitOf(sample).Id));
        AssertSame([AdaptationOf(sample, 0)], await store.ListAdaptationsAsync(sample.Id));
        AssertSame(lesson, await store.FindLessonAsync(sample.Id, lesson.Id));
        AssertSame(school, await store.FindSchoolAsync(sample.Id));
    }

    [Theory, EachDatabase]
    public async Task SaveDesignedTask_EveryTaskOfTheLibrary_ComesBackEqual(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        foreach (var design in TaskLibrary.Designs)
            await test.Store.SaveDesignedTaskAsync(design.ToTask("es", sample.Id), new() { SchoolId = sample.Id, TaskId = design.Id, Design = design });
        AssertSame(
            TaskLibrary.Designs.Select(d => new SchoolTaskDesign { SchoolId = sample.Id, TaskId = d.Id, Design = d }).OrderBy(d => d.TaskId).ToList(),
            await test.Store.ListTaskDesignsAsync(sample.Id));
        var first = TaskLibrary.Designs[0];
        AssertSame(first.ToTask("es", sample.Id), await test.Store.FindTaskAsync(sample.Id, first.Id));
        Assert.Equal(first.Levels[0].ValueOf(first.Factors[0]), (await test.Store.FindTaskDesignAsync(sample.Id, first.Id))!.Design.Levels[0].ValueOf(first.Factors[0]));
        await Assert.ThrowsAsync<ArgumentException>(
            () => test.Store.SaveDesignedTaskAsync(sample.Task, new() { SchoolId = sample.Id, TaskId = sample.Task.Id, Design = first }));
    }

    [Theory, EachDatabase]
    public async Task Remove_AdaptationIncidentAndUnit_AreGoneAndAgainChangesNothing(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        await store.SaveIncidentAsync(IncidentOf(sample));
        await store.SaveUnitAsync(UnitOf(sample));
        await store.SaveAdaptationAsync(AdaptationOf(sample, 0));
        await store.SaveAdaptationAsync(AdaptationOf(sample, 1));
        for (var i = 0; i < 2; i++)
        {
            await store.RemoveIncidentAsync(sample.Id, SampleSchool.IdOf(911));
            await store.RemoveUnitAsync(sample.Id, SampleSchool.IdOf(920));
            await store.RemoveAdaptationAsync(sample.Id, sample.Pupils[0].Id, sample.Task.Id);
        }
        Assert.Empty(await store.ListIncidentsAsync(sample.Id));
        Assert.Empty(await store.ListUnitsAsync(sample.Id));
        AssertSame([AdaptationOf(sample, 1)], await store.ListAdaptationsAsync(sample.Id));
    }

    [Theory, EachDatabase]
    public async Task ErasePupil_InGroupsIncidentsAndAdaptations_IsTakenOutOfThem(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        await store.SaveLessonGroupsAsync(GroupsOf(sample, 0, 1, 2));
        await store.SaveIncidentAsync(IncidentOf(sample, 2, 0));
        await store.SaveAdaptationAsync(AdaptationOf(sample, 0));
        await store.SaveAdaptationAsync(AdaptationOf(sample, 2));

        await store.ErasePupilAsync(sample.Id, sample.Pupils[0].Id);

        AssertSame([GroupsOf(sample, 1, 2)], await store.ListLessonGroupsAsync(sample.Id));
        AssertSame([IncidentOf(sample, 2)], await store.ListIncidentsAsync(sample.Id));
        AssertSame([AdaptationOf(sample, 2)], await store.ListAdaptationsAsync(sample.Id));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveLessonGroupsAsync(GroupsOf(sample, 0, 1)));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveIncidentAsync(IncidentOf(sample, 0)));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveAdaptationAsync(AdaptationOf(sample, 0)));
    }

    [Theory, EachDatabase]
    public async Task Open_StoreFromBeforePlanning_HasTheCautiousPolicyAndKeepsTheRest(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        Assert.Contains(await test.GoBackToAsync("OpenFloor"), m => m.EndsWith("_PlanAndProtect", StringComparison.Ordinal));
        var store = await test.OpenAgainAsync();
        AssertSame(sample.School, await store.FindSchoolAsync(sample.Id));
        AssertSame(sample.Lesson, await store.FindLessonAsync(sample.Id, sample.Lesson.Id));
        AssertSame([sample.Restriction], await store.ListRestrictionsAsync(sample.Id));
    }
}
