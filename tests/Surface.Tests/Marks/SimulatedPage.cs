using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Forms;
using Slantwise.Surface.Tests.Marks.Hands;
using Slantwise.Surface.Tests.Marks.Photos;

namespace Slantwise.Surface.Tests.Marks;

/// <summary>A form that was printed, filled in and photographed, with what is true of it.</summary>
/// <param name="Form">What the reader looks for.</param>
/// <param name="Image">What it is given.</param>
/// <param name="Code">Where its code was seen; none where it could not be read.</param>
/// <param name="Truths">A truth a field.</param>
/// <param name="Pen">What it was filled in with.</param>
/// <param name="View">Where every place of the paper lies in the picture.</param>
/// <param name="Placed">Where the form stands on the paper.</param>
/// <param name="IsPair">Whether a second form stands beside it.</param>
internal sealed record SimulatedPage(
    SheetLayout Form, GreyImage Image, CodeSighting? Code, IReadOnlyList<FieldTruth> Truths, MarkPen Pen, View View, SheetLayout Placed, bool IsPair)
{
    /// <summary>Whether nothing says which of two forms on the paper is meant: its code could not be read.</summary>
    public bool IsNameless => Code is null && IsPair;

    /// <summary>What the reader sees. A form nobody can name is refused before its marks are looked at.</summary>
    public FormTraits Traits() => IsNameless ? new(PageFault.NotFound, [], null) : FormReader.Traits(Image, Form, Code);

    /// <summary>What the reader says.</summary>
    public FormReading Read() => IsNameless ? new(PageFault.NotFound, [], null) : FormReader.Read(Image, Form, Code);

    /// <summary>Makes a page.</summary>
    /// <param name="seed">Of the form, the child and the photo.</param>
    /// <param name="fault">What goes wrong on the way.</param>
    /// <param name="severity">How badly.</param>
    /// <param name="hand">How careless the child is.</param>
    /// <param name="photoSeed">Of the photo alone; none for the first.</param>
    /// <param name="sheet">What was printed; none for a plain form of the seed.</param>
    public static SimulatedPage Of(
        ulong seed, Fault fault, Severity severity, Severity hand = Severity.Fair, ulong photoSeed = 0, PrintedSheet? sheet = null)
    {
        sheet ??= PrintedSheet.Plain(seed);
        var (shot, view, luck) = StageOf(seed, fault, severity, photoSeed, sheet);
        // Finer than the picture, so that the print's own pixels do not show in it, and coarse enough to be quick.
        var print = sheet.Print(Math.Clamp(Math.Round(1.15 * view.PxPerMm), 4, 12));
        fault.OnPrint(print, severity, luck);
        var filled = Child.Fill(print, sheet.Placed, seed, hand);
        fault.OnLeaf(filled.Leaf, severity, luck);
        var image = Camera.Take(filled.Leaf, view, shot, luck);
        return new(sheet.Form, image, Sighting(sheet, view, shot, luck), filled.Truths, filled.Pen, view, sheet.Placed, sheet.IsPair);
    }

    /// <summary>The view of a page alone, which is quick.</summary>
    public static View ViewOf(ulong seed, Fault fault, Severity severity) => StageOf(seed, fault, severity, 0, PrintedSheet.Plain(seed)).View;

    // What stands before anything is drawn: how the picture will be taken.
    private static (Shot Shot, View View, Luck Luck) StageOf(ulong seed, Fault fault, Severity severity, ulong photoSeed, PrintedSheet sheet)
    {
        var luck = new Luck(seed ^ Luck.Mixed(photoSeed), 31);
        var shot = UsualShot(luck);
        fault.OnShot(shot, sheet.WidthMm, sheet.HeightMm, severity, luck);
        return (shot, new View(shot, sheet.WidthMm, sheet.HeightMm, luck), luck);
    }

    // What every photo has: a little of each.
    private static Shot UsualShot(Luck luck) => new()
    {
        LeanXRad = luck.Normal(.06),
        LeanYRad = luck.Normal(.06),
        TurnRad = luck.Index(4) * Math.PI / 2 + luck.Normal(.04),
        DistanceFraction = luck.Between(1.3, 2),
        MegapixelCount = luck.Between(2.6, 3.4),
        FillFraction = luck.Between(.88, .97),
        LensFraction = luck.Normal(.004),
        FallFraction = luck.Between(.03, .2),
        FallRad = luck.Between(0, 6.28),
        ExposureFraction = luck.Between(.85, 1.05),
        HazeFraction = luck.Between(0, .06),
        Table = luck.Pick([Table.Dark, Table.Middle, Table.Stripes]),
        DefocusMm = luck.Between(.03, .1),
        NoiseSd = luck.Between(1.5, 4),
        JpegQuality = 78 + luck.Index(15),
    };

    // A decoder finds the finder patterns to about a pixel; where modules melt into each other it finds nothing. One in ten is missed anyway, but on paper
    // with two forms something must say which is meant.
    private static CodeSighting? Sighting(PrintedSheet sheet, View view, Shot shot, Luck luck)
    {
        var (code, n) = (sheet.Placed.Code, sheet.CodeModuleCount);
        var moduleMm = code.SizeMm / n;
        var melts = moduleMm * view.PxPerMm < 2 || shot.DefocusMm > moduleMm * .7 || shot.MotionMm > moduleMm * 1.3;
        var isMissed = luck.Happens(.1);
        var jitterPx = .7;
        PixelPoint At(double x, double y)
        {
            var p = view.PxOf(code.XMm + x * moduleMm, code.YMm + y * moduleMm);
            return new(p.XPx + luck.Normal(jitterPx), p.YPx + luck.Normal(jitterPx));
        }
        var far = n - 3.5;
        var sighting = new CodeSighting(At(3.5, 3.5), At(far, 3.5), At(3.5, far), (n - 7.0) / n);
        return melts || (isMissed && !sheet.IsPair) ? null : sighting;
    }
}
