using System.Globalization;
using Slantwise.Engines.Planning.Space;

namespace Slantwise.Records.Halls;

/// <summary>A layout read: what is too near to what, what the teacher sees, how much room there is.</summary>
/// <param name="Clashes">By mat; empty where nothing is too near.</param>
/// <param name="ClashNotes">A sentence for each, in the same order.</param>
/// <param name="Sight">What the teacher sees; none where nobody said where they stand.</param>
/// <param name="Back">Which way they face then; none without a place.</param>
/// <param name="SightNotes">Sentences about it, at least one.</param>
/// <param name="RoomNotes">How many mats fit, and how much floor a pupil has.</param>
public sealed record HallReading(
    IReadOnlyList<LayoutClash> Clashes, IReadOnlyList<HallNote> ClashNotes, TeacherSight? Sight, TeacherBack? Back,
    IReadOnlyList<HallNote> SightNotes, IReadOnlyList<string> RoomNotes)
{
    /// <summary>Floor a pupil in a gymnasium of a secondary school, as it once was usual for 30; to orient by, not a rule.</summary>
    /// <remarks>Source: [Sportsafe2026], which says "historically" and names no origin.</remarks>
    public const double OrientationM2 = 8;

    private static readonly string[] Walls = ["WallLeft", "WallRight", "WallFront", "WallBack"];

    /// <summary>The mats in a clash, as places in the list.</summary>
    public IReadOnlySet<int> ClashingMats { get; } = Clashes
        .SelectMany(c => c.Kind is ClashKind.MatAndMat or ClashKind.FallAndFall ? new[] { c.Mat, c.Other } : [c.Mat]).ToHashSet();

    /// <summary>The mats the teacher does not see, as places in the list.</summary>
    public IReadOnlySet<int> HiddenMats { get; } = (Sight?.HiddenMats ?? []).ToHashSet();

    /// <summary>Reads a layout.</summary>
    /// <param name="hall">The hall.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="pupilCount">Pupils in the lesson, 0 or more.</param>
    /// <param name="culture">The reader's language.</param>
    /// <param name="fallM">The circle to reckon with while no mat lies, 0 to 10.</param>
    /// <exception cref="ArgumentOutOfRangeException">The hall, the layout or the circle outside its ranges.</exception>
    public static HallReading Of(SchoolHall hall, HallLayout layout, int pupilCount, CultureInfo culture, double fallM = 0)
    {
        var (floor, need, mats) = (hall.OnFloor(), layout.Need(), layout.Placed());
        var clashes = LayoutClashes.Of(floor, need, mats);
        var sight = layout.Teacher() is { } place ? TeacherSight.Of(floor, mats, place) : null;
        var back = sight is null ? null : TeacherBack.Of(sight.Place, mats);
        return new(
            clashes, [.. clashes.Select(c => new HallNote(SentenceOf(c, hall, culture), c.Mat))], sight, back, [.. SightOf(hall, layout, sight, back, culture)],
            [.. RoomOf(hall, layout, pupilCount, fallM, culture)]);
    }

    /// <summary>A clash as a sentence: mats by number, things by name, metres rounded up to centimetres.</summary>
    /// <param name="clash">Of the hall's layout.</param>
    /// <param name="hall">The hall.</param>
    /// <param name="culture">The reader's language.</param>
    public static string SentenceOf(LayoutClash clash, SchoolHall hall, CultureInfo culture)
    {
        var missing = Math.Ceiling(clash.MissingM * 100 - 1e-4) / 100;
        object other = clash.Kind switch
        {
            ClashKind.MatAndWall or ClashKind.FallAndWall => HallWords.Text(Walls[clash.Other], culture),
            ClashKind.MatAndObstacle or ClashKind.FallAndObstacle => NameOf(hall, clash.Other, culture),
            _ => clash.Other + 1,
        };
        return HallWords.Text("Clash" + clash.Kind, culture, clash.Mat + 1, other, missing);
    }

    /// <summary>What a thing is called in a sentence: its name, or its number where it has none.</summary>
    /// <param name="hall">The hall.</param>
    /// <param name="thing">Its place in the list.</param>
    /// <param name="culture">The reader's language.</param>
    public static string NameOf(SchoolHall hall, int thing, CultureInfo culture) => hall.Things[thing].Name is { Length: > 0 } name
        ? HallWords.Text("ThingNamed", culture, name) : HallWords.Text("ThingNumbered", culture, thing + 1);

    private static IEnumerable<HallNote> SightOf(SchoolHall hall, HallLayout layout, TeacherSight? sight, TeacherBack? back, CultureInfo culture)
    {
        if (sight is null || back is null)
        {
            yield return new(HallWords.Text("TeacherNowhere", culture), null);
            yield break;
        }
        var (need, mats) = (layout.Need(), layout.Placed());
        if (mats.Count == 0) yield return new(HallWords.Text("SightNoMats", culture), null);
        else if (sight.HiddenMats.Count == 0) yield return new(HallWords.Text("SightAll", culture, mats.Count, sight.FarthestM), null);
        foreach (var hidden in sight.HiddenMats)
        {
            var hider = Enumerable.Range(0, hall.Things.Count).FirstOrDefault(t => hall.Things[t].IsHigh && TeacherSight.Of(Only(hall, t), [mats[hidden]], sight.Place).HiddenMats.Count > 0);
            yield return new(HallWords.Text("SightHidden", culture, hidden + 1, NameOf(hall, hider, culture)), hidden);
        }
        foreach (var behind in back.BehindMats) yield return new(HallWords.Text("SightBehind", culture, behind + 1), behind);
        for (var m = 0; m < mats.Count; m++)
        {
            var (x, y) = (mats[m].Centre.XM - sight.Place.XM, mats[m].Centre.YM - sight.Place.YM);
            var covers = mats[m].Covers(need);
            if (sight.Place.XM > covers.LeftXM && sight.Place.XM < covers.RightXM && sight.Place.YM > covers.FrontYM && sight.Place.YM < covers.BackYM)
                yield return new(HallWords.Text("TeacherOnMat", culture, m + 1), m);
            else if (Math.Sqrt(x * x + y * y) < mats[m].FallM - 1e-6)
                yield return new(HallWords.Text("TeacherInCircle", culture, m + 1), m);
        }
    }

    private static Hall Only(SchoolHall hall, int thing) => hall.OnFloor() with { Obstacles = [hall.OnFloor().Obstacles[thing]] };

    private static IEnumerable<string> RoomOf(SchoolHall hall, HallLayout layout, int pupilCount, double fallM, CultureInfo culture)
    {
        // What fits for sure is said of the widest circle, what nobody exceeds of the smallest.
        var falls = layout.Mats.Select(m => m.FallM).DefaultIfEmpty(fallM).ToList();
        var (floor, need) = (hall.OnFloor(), layout.Need());
        yield return HallWords.Text("RoomFits", culture, MatLayout.Of(floor, need, [falls.Max()]).MostLaidOut, MatBound.Of(floor, need, falls.Min()));
        var areaM2 = FreeFloor.OfM2(hall);
        if (pupilCount == 0) yield return HallWords.Text("RoomFloor", culture, areaM2);
        else yield return HallWords.Text("RoomEach", culture, areaM2, pupilCount, areaM2 / pupilCount, OrientationM2);
    }
}
