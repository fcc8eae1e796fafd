using Slantwise.Records.Safety;
using Slantwise.Records.Schools;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;
using static Slantwise.Records.Tests.Safety.RiskLesson;

namespace Slantwise.Records.Tests.Safety;

public sealed class RiskPageTests
{
    [Fact]
    public void Of_TaskOfTheLibrary_ProposesItsSpaceWithItsSourceAndItsMats()
    {
        // By hand: one mat each and 10 mats, so 10 of 28 at a time; the file says 2 m and common practice.
        var task = Page(TaskOf("Forward roll")).Tasks[0];
        var space = Design("Forward roll").Space.SpaceM;
        Assert.Equal($"{space:0.##} m free to every side of whoever is at work (common practice, no source).", task.ProposedControls[0]);
        Assert.Contains("With 10 mats at most", task.ProposedControls[1]);
        Assert.Contains(task.ProposedControls, c => c.StartsWith("All roll one way", StringComparison.Ordinal));
        Assert.Equal(Design("Forward roll").Words["en"].Caution, task.Caution);
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void Of_EveryTaskOfTheLibrary_ProposesNoMoreThanATeacherMayKeep(string language)
    {
        var policy = new SafetyPolicy { HeadWeight = PolicyChoice.Planned };
        foreach (var design in TaskLibrary.Designs)
        {
            var page = Page(Record(policy: policy), Material(TaskOf(design, language), TaskOf("Target throw")), System.Globalization.CultureInfo.GetCultureInfo(language));
            var task = page.Tasks[0];
            Assert.InRange(task.ProposedControls.Count, 1, RiskCheck.MostControls);
            Assert.All(task.ProposedControls, c => Assert.True(c.Length <= RiskCheck.LineLength, $"{c.Length}: {c}"));
            Assert.Empty(RiskCheck.Of(new RiskNotes { Tasks = [new(task.TaskId, task.ProposedLevel, task.ProposedControls)] }, _ => task.Name));
            Assert.DoesNotContain("{", string.Concat(task.ProposedControls.Append(task.Because)));
        }
    }

    [Fact]
    public void Of_WeightOnTheHead_HasThePolicysConditionsAndItsLongestHold()
    {
        var headstand = Own("Three points with the head", [BodyDemand.HeadWeight, BodyDemand.Inversion]);
        var policy = new SafetyPolicy { HeadWeight = PolicyChoice.Planned, HeadConditions = [SafetyCondition.MatsAround, SafetyCondition.ParentsTold], HeadHoldCapS = 4 };
        var task = Page(Record(policy: policy), Material(headstand)).Tasks[0];
        Assert.Equal(
            ["Mats lie under and all around.", "Families have been told.", "No hold with weight on the head is longer than 4 s.", "Nobody holds or secures a performer: the school's policy."],
            task.PolicyLines);
        Assert.Equal(RiskLevel.High, task.ProposedLevel);
        var planned = Page(Record(policy: policy with { Spotting = PolicyChoice.Planned }), Material(headstand)).Tasks[0];
        Assert.StartsWith("Whoever secures", planned.PolicyLines[^1]);
    }

    [Fact]
    public void Of_PolicyThatClosesATask_SaysSoAndProposesNothing()
    {
        var page = Page(Record(), Material(Own("Headstand", [BodyDemand.HeadWeight])));
        Assert.Null(page.Tasks[0].ProposedLevel);
        Assert.Empty(page.Tasks[0].ProposedControls);
        Assert.Equal(["1 of its 1 levels is not offered: the school's policy."], page.Tasks[0].PolicyLines);
        Assert.Contains(page.Gaps, g => g.Kind == RiskGapKind.NothingOffered);
    }

    [Fact]
    public void Of_TeachersWords_StandInPlaceOfTheProposal()
    {
        var task = TaskOf("Frog balance");
        var page = Page(Record(), Material(task) with
        {
            Notes = new RiskNotes { Tasks = [new(task.TaskId, RiskLevel.Medium, ["Mats in a row."])], EquipmentChecks = ["The wall bars are locked."], Notes = "Ms Ortiz helps." },
        });
        var (proposed, own) = (Page(task).Tasks[0], page.Tasks[0]);
        Assert.Equal((RiskLevel.High, RiskLevel.Medium), (own.ProposedLevel, own.Level));
        Assert.Equal(["Mats in a row."], own.Controls);
        Assert.Equal(proposed.Controls, own.ProposedControls);
        Assert.Equal(["The wall bars are locked."], page.OwnChecks);
        Assert.Equal("Ms Ortiz helps.", page.Notes);
    }

    [Fact]
    public void Of_RestrictedPupils_CountsThemAndWhatIsRemoved()
    {
        var task = TaskOf("Frog balance");
        // By hand, from the file: levels 4 and 5 of the frog are upside down, 2 to 5 rest on the hands.
        var record = Record().Restricted(0, BodyDemand.Inversion).Restricted(1, BodyDemand.HandWeight).Restricted(2, BodyDemand.Roll).Restricted(3, BodyDemand.Inversion, new DateOnly(2020, 1, 1));
        var levels = task.Levels.Count;
        var lines = Page(record, Material(task)).RestrictionLines;
        Assert.Equal("3 pupils have restrictions on this day.", lines[0]);
        Assert.Equal($"For 2 pupils levels are removed: 4 of the lesson's {levels} in all. Each one's own sheet shows what is left.", lines[1]);
        Assert.Equal(["Nobody has a restriction on this day."], Page(task).RestrictionLines);
        Assert.Equal("None of this lesson's levels is removed by that.", Page(Record().Restricted(0, BodyDemand.Roll), Material(task)).RestrictionLines[1]);
    }

    [Fact]
    public void Of_Names_OnlyWhereAskedAndNeverWhatIsRuledOut()
    {
        var record = Record().Restricted(4, BodyDemand.Inversion).Restricted(4, BodyDemand.Roll).Restricted(2, BodyDemand.Impact);
        var material = Material(TaskOf("One-foot balance"));
        Assert.Empty(Page(record, material).NamedPupils);
        var named = Page(record, material with { Notes = new RiskNotes { ShowsNames = true } });
        Assert.Equal(["P3", "P5"], named.NamedPupils.Select(p => p.Label));
        Assert.DoesNotContain("upside", string.Concat(named.RestrictionLines));
    }

    [Fact]
    public void Of_PupilWithoutALevel_IsAGapThatNamesNobody()
    {
        var record = Record().Restricted(4, BodyDemand.Impact);
        var gap = Assert.Single(Page(record, Material(Own("Jumps", [BodyDemand.Impact]))).Gaps, g => g.Kind == RiskGapKind.PupilsWithoutLevel);
        Assert.Equal("1 pupil has no level left in “Jumps”: what is there to do meanwhile?", gap.Sentence);
    }

    [Fact]
    public void Of_WhatIsNotKnown_IsSaid()
    {
        RiskGapKind[] Kinds(RiskPage page) => [.. page.Gaps.Select(g => g.Kind)];
        Assert.Equal([RiskGapKind.NoEmergencyNotes, RiskGapKind.NoSheet], Kinds(Page(Record(emergency: " "), new RiskMaterial())));
        Assert.Equal([RiskGapKind.NoMats], Kinds(Page(Record(mats: null), Material(TaskOf("Frog balance")))));
        Assert.Equal([RiskGapKind.NoDesign], Kinds(Page(Own("Mine", [[]]))));
        Assert.Empty(Page(TaskOf("Frog balance")).Gaps);
    }

    [Fact]
    public void Of_SchoolsOwnDesign_ComesBeforeTheLibrarys()
    {
        var own = Design("Frog balance") with { Space = new ClearSpace(3.5m, "Otto2020") };
        var page = Page(Record(), Material(TaskOf("Frog balance")) with { Designs = [own] });
        Assert.Equal("3.5 m free to every side of whoever is at work (source: Otto2020).", page.Tasks[0].ProposedControls[0]);
    }

    [Fact]
    public void Of_Log_ShowsTheLatestThreeOfTheSameTaskUpToTheDay()
    {
        var task = TaskOf("Frog balance");
        var day = Record().Lesson.Date;
        Incident[] log =
        [
            Incident(task.TaskId, day.AddDays(1), "tomorrow"), Incident(task.TaskId, day, "a"), Incident(Design("Forward roll").Id, day, "roll"), Incident(null, day, "none"),
            Incident(task.TaskId, day.AddDays(-7), "b"), Incident(task.TaskId, day.AddDays(-8), "c"), Incident(task.TaskId, day.AddDays(-9), "d"),
        ];
        Assert.Equal(["a", "b", "c"], Page(Record(), Material(task) with { Incidents = log }).Tasks[0].Earlier.Select(i => i.Happened));
    }

    [Fact]
    public void Of_InSpanish_SaysNoEnglish()
    {
        var policy = new SafetyPolicy { HeadWeight = PolicyChoice.Planned };
        var page = Page(Record(mats: 4, policy: policy, emergency: "").Restricted(0, BodyDemand.Inversion), Material(TaskOf(Design("Forward roll"), "es"), TaskOf(Design("Target throw"), "es")), Spanish);
        var said = string.Join('\n', [.. page.Tasks.SelectMany(t => t.Controls.Concat(t.PolicyLines).Concat(t.Questions).Append(t.Because)), .. page.ProposedChecks, .. page.RestrictionLines, .. page.Gaps.Select(g => g.Sentence)]);
        Assert.DoesNotMatch(@"\b(the|mats|level|one|of|free|is|are)\b", said);
        Assert.Matches("[0-9],[0-9] m libres|[0-9] m libres", said);
    }
}
