using Slantwise.Records.Safety;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tests.Safety;

/// <summary>Our own working rule; what it should say of single tasks is common practice, no source.</summary>
public sealed class RiskRuleTests
{
    private static readonly DateOnly Day = new(2027, 3, 8);

    [Theory]
    [InlineData("One-foot balance", RiskLevel.Low)]
    [InlineData("Dribble with the hand", RiskLevel.Low)]
    [InlineData("Target throw", RiskLevel.Medium)]
    [InlineData("Forward roll", RiskLevel.High)]
    [InlineData("Log roll", RiskLevel.Medium)]
    [InlineData("Rope jumping", RiskLevel.Medium)]
    [InlineData("Front support", RiskLevel.Medium)]
    [InlineData("Frog balance", RiskLevel.High)]
    [InlineData("Shoulder stand", RiskLevel.High)]
    public void LevelOf_TasksOfTheLibrary_IsWhatTheirLevelsAskFor(string name, RiskLevel expected)
    {
        var task = RiskLesson.Page(RiskLesson.TaskOf(name)).Tasks[0];
        Assert.Equal(expected, task.ProposedLevel);
        Assert.Equal(expected == RiskLevel.Low, task.Reasons.Count == 0);
    }

    [Fact]
    public void LevelOf_EveryTaskOfTheLibrary_IsHighWhereAnythingOfferedIsUpsideDown()
    {
        var policy = new SafetyPolicy();
        var seen = new HashSet<RiskLevel>();
        foreach (var design in TaskLibrary.Designs)
        {
            var offered = Offer.LevelsFor(RiskLesson.TaskOf(design).Levels, policy, [], Day);
            // The second version: over the designs' own needs, not over postures again.
            var needs = design.Levels.Where(l => l.Needs.All(d => Offer.IsAllowed(d, policy))).SelectMany(l => l.Needs).ToHashSet();
            var expected = needs.Overlaps([BodyDemand.Inversion, BodyDemand.HeadWeight]) ? RiskLevel.High
                : needs.Overlaps([BodyDemand.Roll, BodyDemand.HandWeight, BodyDemand.Impact])
                    || design.Pattern is MovementPattern.Throw or MovementPattern.Catch or MovementPattern.Strike or MovementPattern.RopeJumping
                    || design.Levels.Any(l => l.Dose.Kind == DoseKind.HeightM && design.Pattern is not (MovementPattern.Catch or MovementPattern.Dribble)) ? RiskLevel.Medium
                : RiskLevel.Low;
            var level = RiskRule.LevelOf(RiskRule.ReasonsOf(offered, design.Pattern, []));
            Assert.True(expected == level, $"{design.Words["en"].Name}: {level}, expected {expected}");
            seen.Add(level);
        }
        Assert.Equal(3, seen.Count);
    }

    [Fact]
    public void ReasonsOf_LevelsThePolicyRemoves_AreNotCounted()
    {
        var closed = RiskLesson.Record(policy: new SafetyPolicy { Inversion = PolicyChoice.NotAllowed });
        var task = RiskLesson.TaskOf("Frog balance");
        Assert.Contains(RiskReason.Inversion, RiskLesson.Page(task).Tasks[0].Reasons);
        Assert.Equal(RiskLevel.Medium, RiskLesson.Page(closed, RiskLesson.Material(task)).Tasks[0].ProposedLevel);
    }

    [Fact]
    public void ReasonsOf_ThrowingInAnotherTask_RaisesTheQuietOne()
    {
        var page = RiskLesson.Page(RiskLesson.TaskOf("One-foot balance"), RiskLesson.TaskOf("Target throw"));
        Assert.Equal([RiskReason.FlyingNearby], page.Tasks[0].Reasons);
        Assert.Equal(RiskLevel.Medium, page.Tasks[0].ProposedLevel);
        Assert.Equal([RiskReason.Flying], page.Tasks[1].Reasons);
    }

    [Fact]
    public void TallestM_HeightOfABall_IsNoHeight()
    {
        var ball = RiskLesson.TaskOf("High ball");
        Assert.Contains(ball.Levels, l => l.Dose.Kind == DoseKind.HeightM);
        Assert.Equal(0, RiskRule.TallestM(ball.Levels, MovementPattern.Catch));
        Assert.Equal(0.45m, RiskRule.TallestM(RiskLesson.TaskOf("Jump down and land").Levels, MovementPattern.JumpAndLanding));
    }

    [Fact]
    public void Questions_HeightOverTheGuidelines_AsksAndBelowIsQuiet()
    {
        // Source: [QldCara2021], 40 cm.
        var task = RiskLesson.TaskOf("Jump down and land");
        Assert.Contains("0.45 m", Assert.Single(RiskLesson.Page(task).Tasks[0].Questions));
        Assert.Empty(RiskLesson.Page(task with { Levels = [.. task.Levels.Take(4)] }).Tasks[0].Questions);
    }

    [Fact]
    public void ReasonsOf_NothingOffered_IsEmpty() => Assert.Empty(RiskRule.ReasonsOf([], MovementPattern.Roll, [MovementPattern.Throw]));
}
