using System.Globalization;
using CsCheck;
using Slantwise.Engines.Planning.Space;
using Slantwise.Records.Halls;
using static Slantwise.Records.Tests.Halls.SampleHall;

namespace Slantwise.Records.Tests.Halls;

public sealed class HallReadingTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es-ES");

    [Fact]
    public void Of_EachKindOfClash_SaysByHowMuchInBothLanguages()
    {
        // By hand, mats of 2 × 1 m, a metre clear everywhere. Mats 1 and 2 are .6 m apart. Mat 3 lies .75 m from the right wall, mat 4 .5 m from the stage.
        // The circle of mat 5 is 1.5 m around a middle that is 1.2 m from the front wall, 1.2 m from mat 6's side, and both circles together 3 m on 2.2 m.
        var hall = SampleHall.Of(20, 12, new HallThing("Stage", 0, 9, 5, 3, true), new HallThing("", 12.8, 2.2, 1, 1, false));
        var layout = Layout(1, 1, Mat(3, 3), Mat(5.6, 3), Mat(18.25, 6), Mat(3, 8), Mat(10, 1.2, true, 1.5), Mat(12.2, 5), Mat(11.7, 1.6, true, 1.5)) with { AreCirclesApart = true };
        var notes = HallReading.Of(hall, layout, 20, English).ClashNotes.Select(n => n.Sentence).ToList();
        Assert.Contains("Mat 1 and mat 2: 0.4 m too near.", notes);
        Assert.Contains("Mat 3 and the right wall: 0.25 m too near.", notes);
        Assert.Contains("Mat 4 and “Stage”: 0.5 m too near.", notes);
        Assert.Contains("The falling circle of mat 5 reaches 0.3 m beyond the front wall.", notes);
        Assert.Contains("The falling circle of mat 5 reaches 0.3 m onto mat 7.", notes);
        // √(1.7² + .4²) = 1.7464; 3 − that, rounded up.
        Assert.Contains("The falling circles of mats 5 and 7 overlap by 1.26 m.", notes);
        // From (11.7, 1.6) to the thing's corner at (12.8, 2.2) it is 1.253 m.
        Assert.Contains("The falling circle of mat 7 reaches 0.25 m onto thing 2.", notes);
        var spanish = HallReading.Of(hall, layout, 20, Spanish).ClashNotes.Select(n => n.Sentence).ToList();
        Assert.Contains("Colchonetas 1 y 2: demasiado cerca, faltan 0,4 m.", spanish);
        Assert.Contains("Colchoneta 4 y «Stage»: demasiado cerca, faltan 0,5 m.", spanish);
        Assert.Equal(notes.Count, spanish.Count);
        Assert.Equal(7, HallReading.Of(hall, layout, 20, English).Clashes.Select(c => c.Kind).Distinct().Count());
    }

    [Fact]
    public void Of_AMatMovedOntoAnother_AlwaysClashesAndEveryClashIsSaid() => Any.Where(s => s.Hall.WidthM > 8).Sample(s =>
    {
        var laid = SpaceProposal.LaidOut(s.Hall, s.Layout, 4, []);
        if (laid.Mats.Count < 2) return;
        var moved = laid with { Mats = [laid.Mats[0] with { XM = laid.Mats[1].XM + 0.3, YM = laid.Mats[1].YM }, .. laid.Mats.Skip(1)] };
        foreach (var culture in new[] { English, Spanish })
        {
            var reading = HallReading.Of(s.Hall, moved, 20, culture);
            Assert.Contains(reading.Clashes, c => c is { Kind: ClashKind.MatAndMat, Mat: 0, Other: 1 });
            Assert.Equal(reading.Clashes.Count, reading.ClashNotes.Count);
            Assert.All(reading.ClashNotes, n => Assert.DoesNotContain("{", n.Sentence));
            Assert.All(reading.ClashNotes.Zip(reading.Clashes), p => Assert.Contains($"{p.Second.Mat + 1}", p.First.Sentence));
            Assert.Contains(0, reading.ClashingMats);
            Assert.Contains(1, reading.ClashingMats);
        }
    }, iter: 15);

    [Fact]
    public void Of_AMatBehindAPillar_SaysWhatHidesIt()
    {
        // By hand: the teacher at the left, a pillar in the middle, mat 2 straight behind it; a low bench hides nothing.
        var hall = SampleHall.Of(20, 10, new HallThing("Bench", 4, 4.5, 1, 1, false), new HallThing("Pillar", 9, 4.5, 1, 1, true));
        var layout = Layout(1, 1, Mat(5, 8), Mat(15, 5)) with { TeacherXM = 1, TeacherYM = 5 };
        var reading = HallReading.Of(hall, layout, 20, English);
        Assert.Equal([1], reading.HiddenMats);
        Assert.Contains(reading.SightNotes, n => n == new HallNote("You do not see mat 2: “Pillar” is in between.", 1));
        Assert.DoesNotContain(reading.SightNotes, n => n.Sentence.Contains("behind your back", StringComparison.Ordinal));
        Assert.Contains("No ve la colchoneta 2: «Pillar» está en medio.", HallReading.Of(hall, layout, 20, Spanish).SightNotes.Select(n => n.Sentence));
    }

    [Fact]
    public void Of_ATeacherInTheMiddle_NamesMatsBehindTheBack()
    {
        // By hand: three mats to the right, one to the left: whoever faces the three has the one behind.
        var layout = Layout(1, 1, Mat(15, 2), Mat(16, 5), Mat(15, 8), Mat(3, 5)) with { TeacherXM = 10, TeacherYM = 5 };
        var reading = HallReading.Of(SampleHall.Of(20, 10), layout, 20, English);
        Assert.Equal([3], reading.Back!.BehindMats);
        Assert.Equal(0, Math.Sin(reading.Back.FacingRad), 1e-9);
        Assert.Contains(reading.SightNotes, n => n.Mat == 3 && n.Sentence.Contains("behind your back", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_ATeacherOnAMatOrInACircle_SaysSo()
    {
        var layout = Layout(1, 1, Mat(5, 5, fallM: 1.5), Mat(12, 5, fallM: 1.5)) with { TeacherXM = 5.5, TeacherYM = 5.2 };
        Assert.Contains("You stand on mat 1.", Sentences(layout));
        Assert.Contains("You stand in the falling circle of mat 2.", Sentences(layout with { TeacherXM = 12, TeacherYM = 6 }));
        Assert.Contains(Sentences(layout with { TeacherXM = null }), s => s.StartsWith("Where you stand is not said", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_ThirtyPupilsInAGymnasium_SaysTheFloorOfEach()
    {
        // Source: [Sportsafe2026]: about 8 m² each for 30. By hand: 240 m² are 8 each; 180 m² are 6.
        string Room(double depthM) => string.Join(' ', HallReading.Of(SampleHall.Of(20, depthM), Layout(), 30, English).RoomNotes);
        Assert.Contains("240 m², 8.0 m² for each of 30 pupils", Room(12));
        Assert.Contains("180 m², 6.0 m² for each of 30 pupils", Room(9));
        Assert.Contains("no rule", Room(9));
        Assert.DoesNotContain("pupils", string.Join(' ', HallReading.Of(SampleHall.Of(20, 9), Layout(), 0, English).RoomNotes));
    }

    [Fact]
    public void FreeFloor_ThingsThatOverlapAndStickOut_AreTakenOffOnce()
    {
        // By hand: 10 × 10 less 2 × 2, less another 2 × 2 of which 1 × 1 is under the first, less 1 × 1 of a thing half outside.
        var hall = SampleHall.Of(10, 10, new HallThing("", 1, 1, 2, 2, true), new HallThing("", 2, 2, 2, 2, false), new HallThing("", 9, 0, 5, 1, false));
        Assert.Equal(100 - 4 - 3 - 1, FreeFloor.OfM2(hall), 1e-9);
    }

    private static List<string> Sentences(HallLayout layout) => [.. HallReading.Of(SampleHall.Of(20, 10), layout, 20, English).SightNotes.Select(n => n.Sentence)];
}
