using System.Globalization;
using Slantwise.Desk.Pages.Groups;
using Slantwise.Records.Groups;
using Slantwise.Records.Lessons;
using Slantwise.Surface.Tests.Paper;

namespace Slantwise.Surface.Tests.Desk.Groups;

public sealed class GroupSessionTests
{
    public GroupSessionTests() => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en-GB");

    private static LessonRecord Lesson(int pupils = 6) => PaperLessons.Of(pupils, PaperLessons.Tripod);

    private static GroupSession Session(LessonRecord record, GroupPlan? plan = null)
    {
        var session = new GroupSession(record, plan ?? new GroupPlan { Sizing = new(false, 2) });
        session.Read();
        return session;
    }

    [Fact]
    public void Make_ThenUndo_GivesBackThePlanBefore()
    {
        var session = Session(Lesson());
        var before = session.Plan;
        Assert.False(session.CanUndo);
        Assert.True(session.Make());
        Assert.Equal(2, session.Plan.Groups.Count);
        Assert.Contains("6 pupils in 2 groups, 3 in each.", session.Said);
        session.Undo();
        Assert.Same(before, session.Plan);
        Assert.False(session.CanUndo);
    }

    [Fact]
    public void Move_ThatBreaksAWish_SaysSoAtOnceAndUndoTakesItBack()
    {
        var record = Lesson();
        var (one, two) = (record.Pupils[0].Id, record.Pupils[1].Id);
        var session = Session(record);
        session.Change(session.Plan.WithWish(new(true, one, two)));
        session.Make();
        var at = session.Plan.GroupOf(one)!.Value;
        Assert.Equal(at, session.Plan.GroupOf(two));
        Assert.True(session.Move(one, 1 - at));
        Assert.Contains(session.Reading.Notes, n => n.Kind == GroupNoteKind.WishNotMet);
        Assert.Contains("Not met", session.Said);
        session.Undo();
        Assert.Empty(session.Reading.Notes);
        Assert.False(session.Move(Guid.NewGuid(), 0));
        Assert.False(session.Move(one, 2));
        Assert.False(session.Move(one, at));
    }

    [Fact]
    public void MakeOthers_WithSomebodyFixed_KeepsThemAndTakesTheNextSeed()
    {
        var record = Lesson(9);
        var session = Session(record, new GroupPlan { Sizing = new(false, 3), Seed = 999_999 });
        session.Make();
        session.Move(record.Pupils[0].Id, 2);
        session.ToggleLock(record.Pupils[0].Id);
        Assert.True(session.MakeOthers());
        Assert.Equal(0, session.Plan.Seed);
        Assert.Equal(2, session.Plan.GroupOf(record.Pupils[0].Id));
        Assert.True(session.Plan.IsLocked(record.Pupils[0].Id));
    }

    [Fact]
    public void Make_WithMoreFixedThanFit_ChangesNothingAndSaysWhy()
    {
        var record = Lesson(4);
        Guid[] three = [.. record.Pupils.Take(3).Select(p => p.Id)];
        var session = Session(record, new GroupPlan { Sizing = new(false, 2), Groups = [new(three, three, []), new([record.Pupils[3].Id], [], [])] });
        var before = session.Plan;
        Assert.False(session.Make());
        Assert.Same(before, session.Plan);
        Assert.Equal(GroupNoteKind.NoGroups, session.WhyNone!.Kind);
        Assert.Equal(session.WhyNone.Sentence, session.Said);
        session.ToggleLock(three[0]);
        Assert.Null(session.WhyNone);
    }

    [Fact]
    public void SetMats_WhatCannotBeRead_ChangesNothing()
    {
        var session = Session(Lesson());
        session.Make();
        Assert.False(session.SetMats(0, "first"));
        Assert.True(session.SetMats(0, "4-6"));
        Assert.Equal([4, 5, 6], session.Plan.Groups[0].MatNumbers);
    }

    [Fact]
    public async Task SaveAsync_WhileASaveIsUnderWay_SavesTheNewestOnceMore()
    {
        var (value, saved, gate) = (1, new List<int>(), new TaskCompletionSource());
        var saving = new GroupSaving(async () =>
        {
            var now = value;
            await gate.Task;
            saved.Add(now);
            return now == 3 ? null : "too early";
        });
        var first = saving.SaveAsync();
        value = 2;
        await saving.SaveAsync();
        value = 3;
        await saving.SaveAsync();
        Assert.True(saving.IsBusy);
        gate.SetResult();
        await first;
        Assert.Equal([1, 3], saved);
        Assert.Equal((false, true, null), (saving.IsBusy, saving.IsSaved, saving.Failure));
    }
}
