using Slantwise.Records.Safety;

namespace Slantwise.Records.Tests.Safety;

public sealed class RiskCheckTests
{
    private static readonly Guid Task = new(1, 0, 0, new byte[8]);

    [Fact]
    public void Of_EverythingAtItsLimit_IsFine() => Assert.Empty(RiskCheck.Of(
        new RiskNotes { Tasks = [new(Task, RiskLevel.High, Lines(8, 160))], EquipmentChecks = Lines(12, 160), Notes = new string('a', 1000) }, _ => "Roll"));

    [Fact]
    public void Of_EverythingOneOver_IsRefusedWithItsNumbers()
    {
        var findings = RiskCheck.Of(
            new RiskNotes { Tasks = [new(Task, (RiskLevel)4, Lines(9, 161))], EquipmentChecks = Lines(13, 161), Notes = new string('a', 1001) }, _ => "Roll");
        Assert.All(findings, f => Assert.True(f.IsRefused));
        Assert.Equal(
            ["RiskLevelUnknown", "RiskTooManyControls", .. Enumerable.Repeat("RiskControlTooLong", 9), "RiskTooManyChecks", .. Enumerable.Repeat("RiskCheckTooLong", 13), "RiskNotesTooLong"],
            findings.Select(f => f.Key));
        Assert.Equal("“Roll” has 9 lines; at most 8 are kept.", findings[1].Sentence(RiskLesson.English));
        Assert.Equal("“Roll”, line 1 has 161 characters; at most 160 are kept.", findings[2].Sentence(RiskLesson.English));
        Assert.Equal("Check 1 has 161 characters; at most 160 are kept.", findings[12].Sentence(RiskLesson.English));
    }

    private static string[] Lines(int count, int length) => [.. Enumerable.Repeat(new string('a', length), count)];
}
