using Slantwise.Records.Roster;
using Slantwise.Records.Schools;

namespace Slantwise.Records.Tests.Stores;

public sealed class RosterSavingTests
{
    [Theory, EachDatabase]
    public async Task SaveRoster_OneBadMembership_SavesNothing(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await store.SaveSchoolAsync(sample.School);
        var nobody = new Enrolment { SchoolId = sample.Id, ClassId = sample.Class.Id, PupilId = SampleSchool.IdOf(9) };
        var refused = await Assert.ThrowsAsync<ArgumentException>(
            () => store.SaveRosterAsync(sample.Id, sample.Roster with { Enrolments = [.. sample.Roster.Enrolments, nobody] }));
        Assert.Contains("membership", refused.Message);
        await AssertEmptyAsync(store, sample);
    }

    [Theory, EachDatabase]
    public async Task SaveRoster_RecordOfAnotherSchool_SavesNothing(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await store.SaveSchoolAsync(sample.School);
        var stranger = sample.Pupils[0] with { SchoolId = SampleSchool.IdOf(9) };
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveRosterAsync(sample.Id, sample.Roster with { Pupils = [.. sample.Pupils, stranger] }));
        await AssertEmptyAsync(store, sample);
    }

    [Theory, EachDatabase]
    public async Task SaveRoster_OneCodeForTwo_SaysWhatMustDifferAndSavesNothing(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await store.SaveSchoolAsync(sample.School);
        foreach (var (twin, word) in new[]
        {
            (new Pupil { SchoolId = sample.Id, Id = SampleSchool.IdOf(9), Code = sample.Pupils[1].Code }, "code"),
            (new Pupil { SchoolId = sample.Id, Id = SampleSchool.IdOf(9), Code = "new", RosterKey = sample.Pupils[1].RosterKey }, "roster key"),
        })
        {
            var refused = await Assert.ThrowsAsync<ArgumentException>(() => store.SaveRosterAsync(sample.Id, sample.Roster with { Pupils = [.. sample.Pupils, twin] }));
            Assert.Contains(word, refused.Message);
        }
        var second = sample.Class with { Id = SampleSchool.IdOf(9), RosterKey = null };
        var sameName = await Assert.ThrowsAsync<ArgumentException>(() => store.SaveRosterAsync(sample.Id, sample.Roster with { Classes = [sample.Class, second] }));
        Assert.Contains("name", sameName.Message);
        await AssertEmptyAsync(store, sample);
    }

    [Theory, EachDatabase]
    public async Task SaveRoster_TwoPupilsAndTwoClassesSwapTexts_Swaps(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var other = new SchoolClass { SchoolId = sample.Id, Id = SampleSchool.IdOf(9), Name = "8A" };
        await store.SaveRosterAsync(sample.Id, new RosterSave { Classes = [other] });
        var (one, two) = (sample.Pupils[0], sample.Pupils[1]);
        await store.SaveRosterAsync(sample.Id, new RosterSave
        {
            Classes = [sample.Class with { Name = "8A", RosterKey = null }, other with { Name = "7B", RosterKey = "c-1" }],
            Pupils = [one with { Code = two.Code, RosterKey = two.RosterKey }, two with { Code = one.Code, RosterKey = one.RosterKey }],
        });

        var pupils = (await store.ListPupilsAsync(sample.Id)).ToDictionary(p => p.Id);
        Assert.Equal((two.Code, two.RosterKey, one.DisplayName), (pupils[one.Id].Code, pupils[one.Id].RosterKey, pupils[one.Id].DisplayName));
        Assert.Equal((one.Code, one.RosterKey), (pupils[two.Id].Code, pupils[two.Id].RosterKey));
        Assert.Equal(4, pupils.Count);
        Assert.Equal([("7B", other.Id), ("8A", sample.Class.Id)], (await store.ListClassesAsync(sample.Id)).Select(c => (c.Name, c.Id)));
    }

    [Theory, EachDatabase]
    public async Task SaveRoster_ThatFails_LeavesWhatWasThere(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        var before = await store.ListPupilsAsync(sample.Id);
        var enrolments = await store.ListEnrolmentsAsync(sample.Id);
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveRosterAsync(sample.Id, new RosterSave
        {
            Pupils = [before[0] with { Code = "NEW" }, before[1] with { Code = "NEW" }],
            Enrolments = [enrolments[0] with { IsCurrent = false }],
        }));
        Assert.Equal(before, await store.ListPupilsAsync(sample.Id));
        Assert.Equal(enrolments, await store.ListEnrolmentsAsync(sample.Id));
    }

    [Theory, EachDatabase]
    public async Task SaveRoster_PupilWhoLeft_KeepsTheMembershipAndLeavesTheList(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (store, sample) = (test.Store, new SampleSchool());
        await sample.SaveToAsync(store);
        await store.SaveRosterAsync(sample.Id, new RosterSave { Enrolments = sample.Roster.Enrolments.Select(e => e with { IsCurrent = false }).ToList() });
        Assert.Empty(await store.ListClassPupilsAsync(sample.Id, sample.Class.Id));
        Assert.Equal(4, (await store.ListEnrolmentsAsync(sample.Id)).Count);
    }

    private static async Task AssertEmptyAsync(IStore store, SampleSchool sample)
    {
        Assert.Empty(await store.ListClassesAsync(sample.Id));
        Assert.Empty(await store.ListPupilsAsync(sample.Id));
        Assert.Empty(await store.ListEnrolmentsAsync(sample.Id));
    }
}
