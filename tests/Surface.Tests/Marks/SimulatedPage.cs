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
/// <param name="View">Where everything lies.</param>
internal sealed record SimulatedPage(SheetLayout Form, GreyImage Image, CodeSighting? Code, IReadOnlyList<FieldTruth> Truths, MarkPen Pen, View View)
{
    /// <summary>Makes a page.</summary>
    /// <param name="seed">Of the form, the child and the photo.</param>
    /// <param name="fault">What goes wrong on the way.</param>
    /// <param name="severity">How badly.</param>
    /// <param name="hand">How careless the child is.</param>
    /// <param name="photoSeed">Of the photo alone; none for the first.</param>
    public static SimulatedPage Of(ulong seed, Fault fault, Severity severity, Severity hand = Severity.Fair, ulong photoSeed = 0)
    {
        var stage = StageOf(seed, fault, severity, photoSeed);
        var (form, view, luck) = (stage.Form, stage.View, stage.Luck);
        // Finer than the picture, so that the print's own pixels do not show in it, and coarse enough to be quick.
        var print = Print.Of(form, seed, Math.Clamp(Math.Round(1.15 * view.PxPerMm), 4, 12), stage.IsPair);
        fault.OnPrint(print, severity, luck);
        var filled = Child.Fill(print, form, seed, hand);
        fault.OnLeaf(filled.Leaf, severity, luck);
        var image = Camera.Take(filled.Leaf, view, stage.Shot, luck);
        return new(form, image, Sighting(form, view, stage.Shot, stage.IsPair, luck), filled.Truths, filled.Pen, view);
    }

    /// <summary>The view of a page alone, which is quick.</summary>
    public static View ViewOf(ulong seed, Fault fault, Severity severity) => StageOf(seed, fault, severity, 0).View;

    // What stands before anything is drawn: the form, and how its picture will be taken.
    private static (SheetLayout Form, Shot Shot, View View, bool IsPair, Luck Luck) StageOf(ulong seed, Fault fault, Severity severity, ulong photoSeed)
    {
        var isPair = new Luck(seed, 1).Happens(.25);
        var form = PlainForm.Of(seed, isPair);
        var luck = new Luck(seed ^ Luck.Mixed(photoSeed), 31);
        var (widthMm, heightMm) = (form.WidthMm * (isPair ? 2 : 1), form.HeightMm);
        var shot = UsualShot(luck);
        fault.OnShot(shot, widthMm, heightMm, severity, luck);
        return (form, shot, new View(shot, widthMm, heightMm, luck), isPair, luck);
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
    private static CodeSighting? Sighting(SheetLayout form, View view, Shot shot, bool isPair, Luck luck)
    {
        var moduleMm = form.Code.SizeMm / Print.CodeModuleCount;
        var melts = moduleMm * view.PxPerMm < 2 || shot.DefocusMm > moduleMm * .7 || shot.MotionMm > moduleMm * 1.3;
        var isMissed = luck.Happens(.1);
        var jitterPx = .7;
        PixelPoint At(double x, double y)
        {
            var p = view.PxOf(form.Code.XMm + x * moduleMm, form.Code.YMm + y * moduleMm);
            return new(p.XPx + luck.Normal(jitterPx), p.YPx + luck.Normal(jitterPx));
        }
        var far = Print.CodeModuleCount - 3.5;
        var sighting = new CodeSighting(At(3.5, 3.5), At(far, 3.5), At(3.5, far), (Print.CodeModuleCount - 7.0) / Print.CodeModuleCount);
        return melts || (isMissed && !isPair) ? null : sighting;
    }
}
