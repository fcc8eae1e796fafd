namespace Slantwise.Engines.Marks;

/// <summary>Finds a form in a picture and judges whether it can be trusted.</summary>
internal sealed class FormFinder(SheetLayout layout, GreyImage image, CodeSighting? code)
{
    private const double SearchPxPerMm = 2.2;
    private const double ReadPxPerMm = 4.5;
    private const double LeastPxPerMm = 2.2;
    private const int SearchSidePx = 1600;
    private const double LeastAgreedFraction = .6;
    private const double LeastContrastFraction = .2;
    private const double LeastWhite = 35;
    private const double MostBlurMm = .55;
    private const double LeastRidgeFraction = .04;

    private readonly PictureLevels _levels = new(image);
    private readonly CodePose? _pose = CodePose.Of(layout, code);

    /// <summary>The form's place, or the fault that comes nearest to the truth.</summary>
    public (PageFault Fault, FormPlace? Place) Find()
    {
        var fault = PageFault.NotFound;
        FormPlace? faulty = null;
        foreach (var guess in Guesses())
        {
            var (found, place) = Placed(guess);
            if (found == PageFault.None) return (found, place);
            if (fault == PageFault.NotFound && place is not null) (fault, faulty) = (found, place);
        }
        return fault == PageFault.NotFound && faulty is null ? (WithoutPlace(), null) : (fault, faulty);
    }

    private IReadOnlyList<FormGuess> Guesses()
    {
        var largestMm = layout.Anchors.Max(a => a.SizeMm);
        if (_pose is not null)
        {
            var level = _levels.With(_pose.Scale, SearchPxPerMm);
            var pxPerMm = _pose.Scale * level.Scale;
            var squares = DarkSquare.In(level, (int)Math.Ceiling(1.5 * largestMm * pxPerMm));
            var near = new FormSearch(layout, squares, 10 * _pose.Scale).Near(_pose);
            // Seen at so steep a slant that the code says little about the far end, it may still be found as if there were none.
            return near.Count > 0 ? near : new FormSearch(layout, squares, 10 * _pose.Scale).Anywhere(_pose);
        }
        // The scale is not known: the form is taken to fill the picture, and anything down to a third of it is still found.
        var side = Math.Max(image.WidthPx, image.HeightPx);
        var whole = _levels.With(side, SearchSidePx / 2.0);
        var reach = (int)Math.Ceiling(side * whole.Scale / 20 / 2) + 2;
        return new FormSearch(layout, DarkSquare.In(whole, reach), side / 25.0).Anywhere();
    }

    private (PageFault, FormPlace?) Placed(FormGuess guess)
    {
        var (xMm, yMm) = (layout.WidthMm / 2, layout.HeightMm / 2);
        var level = _levels.With(guess.Flat.Scale(xMm, yMm), ReadPxPerMm);
        if (new AnchorPlacing(layout, _pose).Of(level, guess) is not { } placed) return (PageFault.NotFound, null);
        var pxPerMm = placed.Map.ScaleAt(xMm, yMm);
        // Squares that do not belong together can make a map that folds over.
        if (!(pxPerMm > 0 && pxPerMm < Math.Max(image.WidthPx, image.HeightPx))) return (PageFault.NotFound, null);
        var place = new FormPlace(placed.Map, placed.Anchors, pxPerMm, level, PaperWhite.Of(_levels, layout, pxPerMm));
        if (pxPerMm < LeastPxPerMm) return (PageFault.TooSmall, place);
        if (IsCutOff(place.Map)) return (PageFault.CutOff, place);
        if (Median(place.Anchors.Select(a => a.White)) < LeastWhite || Median(place.Anchors.Select(a => a.ContrastFraction)) < LeastContrastFraction)
            return (PageFault.BadLight, place);
        place = OutlinePlacing.Of(layout, place);
        return (Judge(place), place);
    }

    private PageFault Judge(FormPlace place)
    {
        if (layout.Fields.Count == 0) return PageFault.None;
        if (place.BlurMm > MostBlurMm) return PageFault.Blurred;
        var agreed = place.IsAgreed.Count(a => a) / (double)place.IsAgreed.Count;
        if (agreed >= LeastAgreedFraction) return PageFault.None;
        var ridge = Median(place.Outlines.Select(o => o.RidgeFraction));
        var dark = layout.Fields.Count(f => IsBadlyLit(place, f)) / (double)layout.Fields.Count;
        if (dark > .15) return PageFault.BadLight;
        return ridge < LeastRidgeFraction && place.BlurMm > .6 * MostBlurMm ? PageFault.Blurred : PageFault.NotFound;
    }

    private static bool IsBadlyLit(FormPlace place, MarkField field)
    {
        var at = place.Map.At(field.XMm + field.WidthMm / 2, field.YMm + field.HeightMm / 2);
        return place.White.At(at.XPx, at.YPx) is < LeastWhite or > 254;
    }

    private bool IsCutOff(FormMap map)
    {
        bool IsOut(double xMm, double yMm) => map.At(xMm, yMm) is var p && (p.XPx < 0 || p.YPx < 0 || p.XPx > image.WidthPx || p.YPx > image.HeightPx);
        bool IsAnyOut(double x, double y, double w, double h) => IsOut(x, y) || IsOut(x + w, y) || IsOut(x, y + h) || IsOut(x + w, y + h);
        return layout.Fields.Any(f => IsAnyOut(f.XMm, f.YMm, f.WidthMm, f.HeightMm)) || layout.Writings.Any(w => IsAnyOut(w.XMm, w.YMm, w.WidthMm, w.HeightMm));
    }

    // The code alone says roughly where the form would lie.
    private PageFault WithoutPlace()
    {
        if (IsDark()) return PageFault.BadLight;
        if (_pose is null) return PageFault.NotFound;
        if (_pose.Scale < LeastPxPerMm) return PageFault.TooSmall;
        var (width, height) = (image.WidthPx, image.HeightPx);
        var isOut = layout.Anchors.Take(4).Any(a => _pose.At(a.XMm, a.YMm) is var p && (p.XPx < -.02 * width || p.YPx < -.02 * height || p.XPx > 1.02 * width || p.YPx > 1.02 * height));
        return isOut ? PageFault.CutOff : PageFault.NotFound;
    }

    // Nine tenths of the picture darker than paper in the dimmest light that can be read.
    private bool IsDark()
    {
        var small = _levels.With(Math.Max(image.WidthPx, image.HeightPx), 200).Image;
        return small.Values.Order().ElementAt(small.Values.Length * 9 / 10) < LeastWhite;
    }

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToArray();
        return sorted.Length == 0 ? 0 : sorted[sorted.Length / 2];
    }
}
