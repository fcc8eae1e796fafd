using Slantwise.Engines.Mechanics;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>The figure on the page: it keeps its frame while it is dragged, so that nothing jumps under the hand.</summary>
public sealed class StudioView
{
    /// <summary>Width of the picture, in its own millimetres.</summary>
    public const double WidthMm = 150;

    /// <summary>Height of the picture.</summary>
    public const double HeightMm = 120;

    // Room to drag into.
    private const double FillFraction = .86;
    private const double EdgeMm = 2;

    private FigureFrame? _fitted, _shown;
    private Point2 _offset;
    private int _takenCount;

    /// <summary>From where the figure is seen.</summary>
    public FigureView View { get; private set; } = FigureView.Side;

    /// <summary>The frame of the drawing shown last.</summary>
    /// <exception cref="InvalidOperationException">Nothing was drawn yet.</exception>
    public FigureFrame Frame => _shown ?? throw new InvalidOperationException("Nothing was drawn yet.");

    /// <summary>Looks from elsewhere.</summary>
    /// <param name="view">From where.</param>
    public void Look(FigureView view) => (View, _fitted) = (view, null);

    /// <summary>Draws the posture.</summary>
    /// <param name="session">Whose posture.</param>
    /// <param name="description">What a reader who does not see it is told.</param>
    public Figure Draw(StudioSession session, string description)
    {
        var figure = Drawn(session, description);
        _shown = figure.Frame;
        return figure;
    }

    private Figure Drawn(StudioSession session, string description)
    {
        var options = new FigureOptions(View, WidthMm, HeightMm) { ShowsBase = true, ShowsGravity = true, ShowsContacts = true };
        var isNew = _fitted is null || _takenCount != session.TakenCount;
        if (!isNew)
        {
            var figure = PostureFigure.Of(session.Settled, options with { Frame = FrameOf(session) }, description);
            if (session.IsDragging || Fits(session, figure.Frame)) return figure;
        }
        var fitting = PostureFigure.Of(session.Settled, options, description).Frame;
        var drawn = PostureFigure.Of(session.Settled, options with { StatureMm = FillFraction * fitting.StatureMm }, description);
        // Figures stand at the bottom of their box; here some room is left below them to look down from.
        (_fitted, _offset, _takenCount) = (drawn.Frame with { OriginYMm = drawn.Frame.OriginYMm - .04 * HeightMm }, session.Offset, session.TakenCount);
        return PostureFigure.Of(session.Settled, options with { Frame = _fitted }, description);
    }

    /// <summary>The direction of sight, from the viewer or to it.</summary>
    /// <param name="frame">The frame of the drawing.</param>
    public static Point3 Sight(FigureFrame frame)
    {
        var (right, up) = (frame.Move(1, 0), frame.Move(0, -1));
        return new Point3(right.YH * up.ZH - right.ZH * up.YH, right.ZH * up.XH - right.XH * up.ZH, right.XH * up.YH - right.YH * up.XH);
    }

    /// <summary>How a part on the floor slides when it is dragged in the picture: from the side it only goes to and fro.</summary>
    /// <param name="frame">The frame of the drawing.</param>
    /// <param name="rightMm">To the right.</param>
    /// <param name="downMm">Down.</param>
    public static Point3 Slide(FigureFrame frame, double rightMm, double downMm)
    {
        var (right, down) = (frame.Move(1, 0), frame.Move(0, 1));
        right = 1 / right.LengthH * right;
        var scale = frame.StatureMm;
        // A move on the floor is drawn shortened across the view's height: by the sine of how far from above it looks.
        var flat = new Point3(down.XH, down.YH, 0);
        var foreshortened = flat.LengthH * scale;
        return foreshortened < .05 ? rightMm / scale * right : rightMm / scale * right + downMm / (scale * foreshortened * flat.LengthH) * flat;
    }

    // Where the frame lies for a floor whose origin has moved.
    private FigureFrame FrameOf(StudioSession session)
    {
        var by = session.Offset - _offset;
        var (xMm, yMm, _) = _fitted!.At(new(by.XH, by.YH, 0));
        return _fitted with { OriginXMm = xMm, OriginYMm = yMm };
    }

    private static bool Fits(StudioSession session, FigureFrame frame) => session.Handles.All(h =>
    {
        var (xMm, yMm, _) = frame.At(h.At(session.BodyOf(h)));
        return xMm is > EdgeMm and < WidthMm - EdgeMm && yMm is > EdgeMm and < HeightMm - EdgeMm;
    });
}
