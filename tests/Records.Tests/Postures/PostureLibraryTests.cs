using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;

namespace Slantwise.Records.Tests.Postures;

public sealed class PostureLibraryTests
{
    // Flesh gives: more than this under the floor is seen as a fault (about 2 cm of 1.40 m).
    private const double UnderFloorH = .015;

    // Held as a pair only: each would fall alone. The pair is what the test asks for, so there is no exception from it.
    private static readonly string[] CountedOnEachOther = ["pair-lean-out", "pair-lean-in", "pair-back-to-back", "pair-chairs", "pair-side-star"];

    public static TheoryData<string> Keys => [.. PostureLibrary.All.Select(p => p.Key)];

    [Fact]
    public void Texts_EveryFile_IsReadUnderItsOwnName()
    {
        foreach (var (file, text) in PostureLibrary.Texts())
        {
            var reading = PostureText.Read(text);
            Assert.True(reading.Posture is not null, $"{file}: {string.Join("; ", reading.Problems)}");
            Assert.Equal(file, reading.Posture.Key + ".json");
        }
    }

    [Fact]
    public void Texts_EveryFile_IsWrittenAsTheWriterWritesIt() =>
        Assert.All(PostureLibrary.Texts(), file => Assert.Equal(PostureText.Write(PostureText.Read(file.Value).Posture!), file.Value));

    [Fact]
    public void All_Library_HoldsAtLeast45AndSixOfTwo()
    {
        Assert.True(PostureLibrary.All.Count >= 45, $"{PostureLibrary.All.Count} postures");
        foreach (var group in Enum.GetValues<PostureGroup>())
            Assert.True(PostureLibrary.All.Count(p => p.Group == group) >= 6, $"{group} has too few");
    }

    [Fact]
    public void All_Groups_SayWhatTheirNamesSay() => Assert.All(PostureLibrary.All, posture =>
    {
        Assert.Equal(posture.Group == PostureGroup.Partner, posture.Partner is not null);
        if (posture.Partner is not null) return;
        Assert.Equal(posture.Group == PostureGroup.Inverted, posture.Settle().IsInverted);
        Assert.Equal(posture.Group == PostureGroup.Upright, posture.Contacts.All(c => IsFoot(c.Part)) || posture.Key == "half-kneeling");
        if (posture.Group == PostureGroup.Hands) Assert.Contains(posture.Contacts, c => c.Part is ContactPart.Hand or ContactPart.Forearm);
    });

    [Fact]
    public void Names_InBothLanguages_AreThePosturesAndDiffer()
    {
        var keys = PostureLibrary.All.Select(p => p.Key).Order(StringComparer.Ordinal).ToArray();
        foreach (var culture in new[] { "en", "es" }.Select(CultureInfo.GetCultureInfo))
        {
            var names = PostureNames.Names(culture);
            Assert.Equal(keys, names.Keys.Order(StringComparer.Ordinal));
            Assert.All(names.Values, name => Assert.InRange(name.Length, 3, 60));
            Assert.Equal(names.Count, names.Values.Distinct().Count());
        }
        Assert.DoesNotContain(keys, key => PostureNames.Of(key, CultureInfo.GetCultureInfo("en")) == PostureNames.Of(key, CultureInfo.GetCultureInfo("es")));
    }

    [Fact]
    public void Of_NameOfATeachersOwnPosture_IsItsKey() => Assert.Equal("our-own", PostureNames.Of("our-own", CultureInfo.GetCultureInfo("es")));

    [Theory]
    [MemberData(nameof(Keys))]
    public void Settle_EachPosture_TouchesAndKeepsItsShape(string key)
    {
        var settled = Settled(key);
        Assert.True(settled.IsTouching, $"gap {settled.GapH:0.000} H");
        // The files say how the body lies; the floor only takes the rounding of the angles out of it.
        Assert.All(settled.Bodies, body => Assert.InRange(body.TurnedRad * 180 / Math.PI, 0, 1));
        Assert.All(settled.Bodies, body => Assert.InRange(body.GapH, 0, .005));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Settle_EachPosture_LeavesNothingUnderTheFloor(string key)
    {
        foreach (var body in Settled(key).Bodies)
            foreach (var part in Enum.GetValues<ContactPart>())
                foreach (var side in SidesOf(part))
                {
                    var lowestH = LowestH(body, part, side);
                    Assert.True(lowestH > -UnderFloorH, $"{part} {side} at {lowestH:0.000} H");
                }
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Settle_EachPosture_WhatIsNotNamedDoesNotCarry(string key)
    {
        // A head on the floor that is not named as a contact would be weight on the head that nobody is warned of. Lying on the back and
        // in a shoulder stand the back of the head may rest: then its crown does not point down.
        var posture = PostureLibrary.Find(key)!;
        foreach (var body in Settled(key).Bodies)
        {
            var head = body.Skeleton.Frame(SegmentKind.Head, Side.Middle);
            if (posture.HasHeadWeight || head.Turned.Z.ZH > -.5) continue;
            Assert.True(LowestH(body, ContactPart.Crown, Side.Middle) > .01, "The crown is at the floor.");
        }
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void PostureBalance_EachPosture_IsHeldWithRoom(string key)
    {
        var balance = PostureBalance.Of(Settled(key));
        Assert.True(balance.IsHeld, $"margin {balance.Whole.Margin.MarginH:0.000} H");
        // On one foot the sides of the foot are .0275 away: no balance has more room than its base, and people stand over its middle.
        Assert.InRange(balance.Whole.Margin.MarginH, .015, .2);
        if (balance.Carried is { } carried) Assert.InRange(carried.Margin.MarginH, .02, .2);
    }

    [Fact]
    public void PostureBalance_Pairs_SomeNeedEachOther()
    {
        foreach (var key in CountedOnEachOther)
        {
            var pull = PostureBalance.Of(Settled(key)).Pull!;
            Assert.True(pull.LeastFraction > 0 || pull.MostFraction < 0, $"{key} stands without a pull: {pull.LeastFraction:0.00} to {pull.MostFraction:0.00}");
        }
        // The names say which way: out is a pull, in and back to back are a push.
        Assert.True(PostureBalance.Of(Settled("pair-lean-out")).Pull!.LeastFraction > 0);
        Assert.True(PostureBalance.Of(Settled("pair-lean-in")).Pull!.MostFraction < 0);
        Assert.True(PostureBalance.Of(Settled("pair-back-to-back")).Pull!.MostFraction < 0);
    }

    [Fact]
    public void Settle_BackToBack_PutsEachBehindTheOther()
    {
        // By hand: the first faces the front, so the partner's chest is behind its own by twice the roundness of a back.
        var settled = Settled("pair-back-to-back");
        var patch = ContactPatch.Of(ContactPart.UpperBack);
        Point3 Back(SettledBody body) => body.Skeleton.Frame(SegmentKind.UpperTrunk, Side.Middle).At(patch.Centre);
        Assert.Equal(-2 * patch.RadiusH, (Back(settled.Partner!) - Back(settled.Body)).XH, .002);
    }

    [Fact]
    public void Joins_OfCarriedPartners_RestOnShouldersHipsKneesAndHandsOnly()
    {
        // Common practice, no source: never on the neck, the head or the middle of the back.
        ContactPart[] allowed = [ContactPart.Shoulder, ContactPart.Hip, ContactPart.Seat, ContactPart.Knee, ContactPart.Hand, ContactPart.Thigh];
        var carried = PostureLibrary.All.Where(p => p.Partner is { IsCarried: true }).ToList();
        Assert.NotEmpty(carried);
        Assert.All(carried, posture => Assert.All(posture.Partner!.Joins, join => Assert.Contains(join.On.Part, allowed)));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Pose_OfASymmetricPosture_IsItsOwnMirrorImage(string key)
    {
        var posture = PostureLibrary.Find(key)!;
        var isSymmetric = posture.Contacts.All(c => posture.Contacts.Contains(Mirrored(c)))
            && IsPaired(posture.Pose, Joint.HipFlexion) && IsPaired(posture.Pose, Joint.ShoulderFlexion);
        if (!isSymmetric || posture.Partner is not null) return;
        Assert.True(Enum.GetValues<Joint>().All(joint => IsPaired(posture.Pose, joint)), "A joint differs from left to right.");
        Assert.Equal(0, posture.Pose.LeanRad);
        Assert.Equal(0, PostureBalance.Of(posture.Settle()).Whole.Centre.YH, 1e-9);
    }

    private static bool IsPaired(Pose pose, Joint joint) => pose.AngleRad(joint, Side.Left) == pose.Mirrored().AngleRad(joint, Side.Left);

    private static bool IsFoot(ContactPart part) => part is ContactPart.Foot or ContactPart.Toes or ContactPart.Heel;

    private static SettledPosture Settled(string key) => PostureLibrary.Find(key)!.Settle();

    private static Contact Mirrored(Contact contact) => contact with
    {
        Side = contact.Side switch { Side.Left => Side.Right, Side.Right => Side.Left, _ => Side.Middle },
    };

    private static Side[] SidesOf(ContactPart part) => SegmentFigures.IsPaired(ContactPatch.Of(part).Segment) ? [Side.Left, Side.Right] : [Side.Middle];

    private static double LowestH(SettledBody body, ContactPart part, Side side)
    {
        var patch = ContactPatch.Of(part);
        return patch.Lowest(body.Skeleton.Frame(patch.Segment, side)).ZH;
    }
}
