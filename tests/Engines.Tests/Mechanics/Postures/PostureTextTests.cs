using CsCheck;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Engines.Tests.Mechanics.Postures;

public sealed class PostureTextTests
{
    [Fact]
    public void Read_AnglesAndTouches_PoseAndContacts()
    {
        var reading = PostureText.Read("""
            { "key": "stork", "group": "upright", "lean": -3, "joints": { "hipFlexion.left": 45, "kneeFlexion.left": 90 }, "touches": ["foot.right"] }
            """);
        Assert.Empty(reading.Problems);
        Assert.Equal(Math.PI / 2, reading.Posture!.Pose.AngleRad(Joint.KneeFlexion, Side.Left), 1e-12);
        Assert.Equal(0, reading.Posture.Pose.AngleRad(Joint.KneeFlexion, Side.Right));
        Assert.Equal([new Contact(ContactPart.Foot, Side.Right)], reading.Posture.Contacts);
        Assert.False(reading.Posture.Settle().IsInverted);
    }

    [Theory]
    [InlineData("{ \"key\": ", PostureProblemKind.NotJson)]
    [InlineData("[]", PostureProblemKind.NotJson)]
    [InlineData("""{ "group": "upright", "touches": ["foot.left"] }""", PostureProblemKind.Missing)]
    [InlineData("""{ "key": "a", "group": "upright", "touches": [] }""", PostureProblemKind.Missing)]
    [InlineData("""{ "key": "a", "group": "upright", "touches": ["tail"] }""", PostureProblemKind.UnknownName)]
    [InlineData("""{ "key": "a", "group": "upright", "touches": ["foot"] }""", PostureProblemKind.UnknownName)]
    [InlineData("""{ "key": "a", "group": "upright", "touches": ["foot.left"], "joints": { "kneeFlexion": "much" } }""", PostureProblemKind.WrongKind)]
    [InlineData("""{ "key": "a", "group": "upright", "touches": ["foot.left"], "joints": { "kneeFlexion": 190 } }""", PostureProblemKind.BeyondLimit)]
    [InlineData("""{ "key": "a", "group": "upright", "touches": ["foot.left", "foot.right", "hand.left", "crown"] }""", PostureProblemKind.CannotTouch)]
    public void Read_TextThatCannotBeTaken_SaysWhatAndWhere(string json, PostureProblemKind kind)
    {
        var reading = PostureText.Read(json);
        Assert.Null(reading.Posture);
        Assert.Equal(kind, reading.Problems[0].Kind);
        Assert.NotEmpty(reading.Problems[0].At);
    }

    [Fact]
    public void Write_ThenRead_SamePostureToATenthOfADegree() => Gen.Int[-300, 300].Array[2].Sample(tenths =>
    {
        var pose = Pose.Upright.Placed(tenths[0] / 10.0 * Math.PI / 180, 0, 0).With(Joint.ShoulderFlexion, Side.Left, tenths[1] / 10.0 * Math.PI / 180);
        var posture = new Posture("any", PostureGroup.Upright, pose, [new(ContactPart.Foot, Side.Left)]);
        var back = PostureText.Read(PostureText.Write(posture)).Posture!;
        Assert.Equal(pose.BowRad, back.Pose.BowRad, 1e-9);
        Assert.Equal(pose.AngleRad(Joint.ShoulderFlexion, Side.Left), back.Pose.AngleRad(Joint.ShoulderFlexion, Side.Left), 1e-9);
        Assert.Equal(posture.Contacts, back.Contacts);
    });

    [Fact]
    public void Read_AnyText_NeverThrows() => Gen.String.Sample(text => Assert.NotNull(PostureText.Read(text)));
}
