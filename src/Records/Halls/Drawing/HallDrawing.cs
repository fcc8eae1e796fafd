using System.Globalization;
using Slantwise.Engines.Drawing;

namespace Slantwise.Records.Halls.Drawing;

/// <summary>A hall to scale, the same on the screen and on paper; in layers, so that a screen can move what is dragged.</summary>
/// <param name="WidthMm">Of the whole drawing.</param>
/// <param name="HeightMm">Of the whole drawing.</param>
/// <param name="Scale">Where metres are drawn.</param>
/// <param name="Floor">Floor, what the teacher cannot see, things and walls.</param>
/// <param name="Names">What things are called, over the floor that stays clear.</param>
/// <param name="Mats">Each mat's shapes, in the order of the layout.</param>
/// <param name="Above">What is too near to what, and lines of sight.</param>
/// <param name="Teacher">The teacher; empty without a place.</param>
/// <param name="Foot">Scale bar and legend.</param>
/// <param name="Description">What it shows, for those who do not see it.</param>
public sealed record HallDrawing(
    double WidthMm, double HeightMm, HallScale Scale, IReadOnlyList<Shape> Floor, IReadOnlyList<Shape> Names, IReadOnlyList<MatShapes> Mats, IReadOnlyList<Shape> Above,
    IReadOnlyList<Shape> Teacher, IReadOnlyList<Shape> Foot, string Description)
{
    /// <summary>Everything in one drawing.</summary>
    public Scene Scene => new(
        WidthMm, HeightMm,
        [.. Floor, .. Mats.SelectMany(m => m.Zone), .. Names, .. Mats.SelectMany(m => m.Body), .. Above, .. Mats.SelectMany(m => m.Signs), .. Teacher, .. Foot], Description);

    /// <summary>Draws a hall with a layout in it.</summary>
    /// <param name="hall">The hall.</param>
    /// <param name="layout">What lies where.</param>
    /// <param name="reading">The layout, read.</param>
    /// <param name="box">The room there is.</param>
    /// <param name="culture">The reader's language.</param>
    /// <exception cref="ArgumentOutOfRangeException">A box outside its ranges.</exception>
    public static HallDrawing Of(SchoolHall hall, HallLayout layout, HallReading reading, HallBox box, CultureInfo culture) =>
        new HallPainter(hall, layout, reading, box, culture).Draw();

    /// <summary>Draws an empty hall.</summary>
    /// <param name="hall">The hall.</param>
    /// <param name="box">The room there is.</param>
    /// <param name="culture">The reader's language.</param>
    /// <exception cref="ArgumentOutOfRangeException">A box outside its ranges.</exception>
    public static HallDrawing Of(SchoolHall hall, HallBox box, CultureInfo culture) =>
        new HallPainter(hall, SpaceProposal.Start(null), new([], [], null, null, [], []), box, culture).Draw();
}
