using Slantwise.Records.Checks;
using Slantwise.Records.Roster;
using Slantwise.Records.Schools;
using Slantwise.Records.Tests.Checks;
using Slantwise.Records.Tests.Entries;

namespace Slantwise.Records.Tests.Roster;

public sealed class RosterPlanTests
{
    [Fact]
    public void Of_NewSchool_AddsClassesPupilsAndCodes()
    {
        var school = Imported("class,name\n7B,Ana\n7B,Ben\n", out var plan);
        Assert.Equal([RosterItemKind.Class, RosterItemKind.Pupil, RosterItemKind.Pupil], plan.Added.Select(a => a.Kind));
        Assert.Equal(["Ana", "Ben"], school.Labels("7B"));
        Assert.All(school.Pupils, p => Assert.True(PupilCode.IsMade(p.Code), p.Code));
        Assert.All(school.Pupils, p => Assert.Equal(InventedLesson.SchoolId, p.SchoolId));
    }

    [Fact]
    public void Of_SameFileInAnotherSchool_MakesTheSameCodes()
    {
        const string text = "class,name\n7B,Ana\n7B,Ben\n";
        Assert.Equal(Imported(text, out _).Pupils.Select(p => p.Code), Imported(text, out _).Pupils.Select(p => p.Code));
    }

    [Fact]
    public void Of_SomeoneMissing_LeavesTheClassAndIsKept()
    {
        var school = Imported("class,name\n7B,Ana\n7B,Ben\n8A,Cai\n", out _);
        var plan = school.PlanText("class,name\n7B,Ana\n");
        Assert.Equal(("Ben", "7B"), plan.Left.Select(l => (l.Label, l.ClassName)).Single());
        Assert.Equal((0, 0, 1), (plan.Added.Count, plan.Changed.Count, plan.SameCount));
        school.Take(plan.Save);
        Assert.Equal(["Ana"], school.Labels("7B"));
        Assert.Equal(["Cai"], school.Labels("8A"));
        Assert.Equal(3, school.Pupils.Count);

        var back = school.PlanText("class,name\n7B,Ana\n7B,Ben\n");
        Assert.Equal(RosterItemKind.Membership, Assert.Single(back.Added).Kind);
        school.Take(back.Save);
        Assert.Equal(["Ana", "Ben"], school.Labels("7B"));
        Assert.Equal(3, school.Pupils.Count);
    }

    [Fact]
    public void Of_ChangedNameAndCode_SaysFromAndTo()
    {
        var school = Imported("class,name,code,id\n7B,Ana,A1,1\n", out _);
        var plan = school.PlanText("class,name,code,id\n7B,Anna,A9,1\n");
        Assert.Equal(
            [(RosterField.Name, "Ana", "Anna"), (RosterField.Code, "A1", "A9")],
            plan.Changed.Select(c => (c.Field, c.From!, c.To!)));
        school.Take(plan.Save);
        Assert.Equal(("Anna", "A9"), school.Pupils.Select(p => (p.DisplayName!, p.Code)).Single());
    }

    [Fact]
    public void Of_CodesSwapped_IsAllowed()
    {
        var school = Imported("class,name,code,id\n7B,Ana,A1,1\n7B,Ben,B1,2\n", out _);
        var plan = school.PlanText("class,name,code,id\n7B,Ana,B1,1\n7B,Ben,A1,2\n");
        Assert.True(plan.CanSave);
        Assert.Equal(2, plan.Changed.Count);
    }

    [Fact]
    public void Of_CodeOfSomeoneElse_IsRefused()
    {
        var school = Imported("class,name,code,id\n7B,Ana,A1,1\n8A,Ben,B1,2\n", out _);
        Refused(school.PlanText("class,name,code,id\n7B,Ana,b1,1\n"), "CodeTaken");
    }

    [Fact]
    public void Of_OneBadRow_RefusesTheWholeImport()
    {
        var school = Imported("class,name\n7B,Ana\n7B,Ben\n", out _);
        var plan = school.PlanText("class,name\n7B,Ana\n7B,Cai\n,Dov\n");
        Refused(plan, "FieldMissing");
        Assert.Contains(plan.Added, a => a.Label == "Cai");
        Assert.Empty(plan.Left);
    }

    [Fact]
    public void Of_SecondPupilOfTheSameName_TheFirstIsRenamedAndStaysThemself()
    {
        var school = Imported("class,first name,last name\n7B,Ana,García\n7B,Ben,Soto\n", out _);
        var ana = school.Pupils.Single(p => p.DisplayName == "Ana");
        var plan = school.PlanText("class,code,first name,last name\n7B,,Ana,García\n7B,N1,Ana,López\n7B,,Ben,Soto\n");
        Assert.Equal(("Ana", "Ana G."), plan.Changed.Select(c => (c.From!, c.To!)).Single());
        Assert.Equal("Ana L.", Assert.Single(plan.Added).Label);
        Assert.Empty(plan.Left);
        Assert.Equal(ana.Id, plan.Save.Pupils.Single(p => p.DisplayName == "Ana G.").Id);
    }

    [Fact]
    public void Of_TwoWhoMayBothBeTheKnownOne_IsRefusedRatherThanGuessed()
    {
        var school = Imported("class,first name,last name\n7B,Ana,García\n", out _);
        Refused(school.PlanText("class,first name,last name\n7B,Ana,García\n7B,Ana,López\n"), "NameAmbiguous");
    }

    [Fact]
    public void Of_PupilAddedByHand_TakesTheIdOfTheFile()
    {
        var school = Imported("class,name\nPE (7B),Will\n", out _);
        var plan = school.Plan(RosterSamples.OneRoster());
        Assert.True(plan.CanSave);
        Assert.Contains(plan.Changed, c => c is { Kind: RosterItemKind.Pupil, Field: RosterField.RosterKey, Label: "Will", To: "u-3" });
        Assert.Contains(plan.Changed, c => c is { Kind: RosterItemKind.Class, Field: RosterField.RosterKey, To: "c-1" });
        school.Take(plan.Save);
        Assert.Equal(["Amara K.", "Amara L.", "Will"], school.Labels("PE (7B)"));
        Assert.True(school.Plan(RosterSamples.OneRoster()).IsEmpty);
    }

    [Fact]
    public void Of_OneRosterDeletions_EndMemberships()
    {
        var school = new SchoolInMemory();
        school.Take(school.Plan(RosterSamples.OneRoster()).Save);
        Assert.Equal(["Dov"], school.Labels("PE (8A)"));

        school.Take(school.Plan(RosterSamples.OneRoster("users.csv", t => t.Replace("u-1,,", "u-1,tobedeleted,"))).Save);
        Assert.Equal(["Amara", "Will"], school.Labels("PE (7B)"));

        var closed = school.Plan(RosterSamples.OneRoster("classes.csv", t => t.Replace("c-2,,", "c-2,tobedeleted,")));
        Assert.Contains(closed.Findings, f => f is { IsRefused: false, Key: "ClassClosed" });
        school.Take(closed.Save);
        Assert.Empty(school.Labels("PE (8A)"));
        Assert.Contains(school.Classes, c => c.Name == "PE (8A)");
    }

    [Fact]
    public void Of_ClassRenamedInTheFiles_KeepsItsIdAndItsRecordsEnd()
    {
        var school = new SchoolInMemory();
        school.Take(school.Plan(RosterSamples.OneRoster()).Save);
        var before = school.Classes.Single(c => c.RosterKey == "c-1") with { KeepUntil = new DateOnly(2027, 7, 31) };
        school.Take(new RosterSave { Classes = [before] });
        var plan = school.Plan(RosterSamples.OneRoster("classes.csv", t => t.Replace(",PE,07", ",Gym,07")));
        Assert.Contains(plan.Changed, c => c is { Kind: RosterItemKind.Class, Field: RosterField.Name, From: "PE (7B)", To: "Gym" });
        Assert.Equal(before with { Name = "Gym" }, plan.Save.Classes.Single(c => c.Id == before.Id));
    }

    [Fact]
    public void Of_AnotherClassOfTheName_IsRefused()
    {
        var school = new SchoolInMemory();
        school.Take(school.Plan(RosterSamples.OneRoster()).Save);
        Refused(school.Plan(RosterSamples.OneRoster("classes.csv", t => t.Replace("c-1,", "c-9,")).Select(f => f with { Text = f.Text.Replace(",c-1,", ",c-9,") }).ToList()), "ClassNameTaken");
    }

    [Fact]
    public void Of_MostOfAClassMissing_AsksWhetherItIsTheWholeList()
    {
        var school = Imported("class,name\n7B,Ana\n7B,Ben\n7B,Cai\n", out _);
        var plan = school.PlanText("class,name\n7B,Ana\n");
        Assert.Equal("ManyLeave", Assert.Single(plan.Findings).Key);
        Assert.True(plan.CanSave);
        Sentences.AreWhole(plan.Findings);
    }

    private static SchoolInMemory Imported(string text, out RosterPlan plan)
    {
        var school = new SchoolInMemory();
        plan = school.PlanText(text);
        Assert.True(plan.CanSave);
        school.Take(plan.Save);
        return school;
    }

    private static void Refused(RosterPlan plan, string key)
    {
        Assert.False(plan.CanSave);
        Assert.Contains(plan.Findings, f => f.IsRefused && f.Key == key);
        Sentences.AreWhole(plan.Findings);
        Assert.Equal(new RosterSave(), plan.Save with { Classes = [], Pupils = [], Enrolments = [] });
        Assert.Empty(plan.Save.Pupils);
        Assert.Empty(plan.Save.Classes);
        Assert.Empty(plan.Save.Enrolments);
    }
}
