using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>The marking of one picture: what is asked next, what was marked, and back. The picture itself is not here.</summary>
/// <param name="isFront">Whether it is the second picture, taken at right angles: then nothing is asked together.</param>
public sealed partial class PhotoView(bool isFront)
{
    private readonly Dictionary<PhotoStep, PointPx[]> _marks = [];
    private readonly HashSet<PhotoStep> _skipped = [];
    private readonly List<PhotoTouch> _touching = [new(ContactPart.Foot, isFront ? Side.Left : Side.Middle), .. isFront ? [new(ContactPart.Foot, Side.Right)] : Array.Empty<PhotoTouch>()];
    private PhotoStep? _asked;

    /// <summary>Whether it is the second picture.</summary>
    public bool IsFront { get; } = isFront;

    /// <summary>Size and turn of the picture as shown; a width of 0 where there is none.</summary>
    public PhotoTurn Turn => new(WidthPx, HeightPx, QuarterTurnCount + (IsFlipped ? 2 : 0));

    /// <summary>Width of the picture.</summary>
    public double WidthPx { get; private set; }

    /// <summary>Height of the picture.</summary>
    public double HeightPx { get; private set; }

    /// <summary>Whether a picture is shown.</summary>
    public bool HasPicture => WidthPx > 0;

    /// <summary>How often the picture was turned clockwise so that down is down.</summary>
    public int QuarterTurnCount { get; private set; }

    /// <summary>Whether it is shown upside down for marking. Gravity stays as it is in the picture.</summary>
    public bool IsFlipped { get; private set; }

    /// <summary>Whether both arms are marked.</summary>
    public bool AreArmsApart { get; private set; } = isFront;

    /// <summary>Whether both legs are marked.</summary>
    public bool AreLegsApart { get; private set; } = isFront;

    /// <summary>Whether the waist is asked for.</summary>
    public bool IsBackBent { get; private set; }

    /// <summary>From what gravity is known.</summary>
    public LevelBasis Level { get; private set; }

    /// <summary>Whether marking has begun; before, it is asked what touches the floor.</summary>
    public bool HasStarted { get; private set; }

    /// <summary>How often everything is marked: 2 while the marks are repeated to measure one's own error.</summary>
    public int RoundCount { get; private set; } = 1;

    /// <summary>What touches the floor, in the order it was said.</summary>
    public IReadOnlyList<PhotoTouch> Touching => _touching;

    /// <summary>Whether somebody said that hands, head or shoulders carry and no foot, knee or seat: then the drawings are upside down too.</summary>
    public bool IsHeadDown => _touching.Count > 0 && _touching.All(t =>
        t.Part is ContactPart.Hand or ContactPart.Fingertips or ContactPart.Crown or ContactPart.Forehead or ContactPart.Forearm or ContactPart.UpperBack or ContactPart.Elbow);

    /// <summary>Everything to mark, in order.</summary>
    public IReadOnlyList<PhotoStep> Steps => [.. BodySteps(), .. ContactSteps(), .. Level == LevelBasis.Upright ? [PhotoStep.Upright(0), PhotoStep.Upright(1)] : Array.Empty<PhotoStep>()];

    /// <summary>What is asked now; none when all is marked or skipped.</summary>
    public PhotoStep? Current
    {
        get
        {
            var steps = Steps;
            if (_asked is { } asked && steps.Contains(asked)) return asked;
            foreach (var step in steps)
                if (!_skipped.Contains(step) && CountOf(step) < RoundCount) return step;
            return null;
        }
    }

    /// <summary>What is marked, in the order of the steps, each at the mean of its marks.</summary>
    public IReadOnlyList<(PhotoStep Step, PointPx At)> Marks =>
        [.. Steps.Where(s => CountOf(s) > 0).Select(s => (s, Mean(_marks[s])))];

    /// <summary>How often a step was marked.</summary>
    public int CountOf(PhotoStep step) => _marks.TryGetValue(step, out var at) ? at.Length : 0;

    /// <summary>Whether a step was skipped.</summary>
    public bool IsSkipped(PhotoStep step) => _skipped.Contains(step);

    /// <summary>Takes a new picture of a size; marks of another are gone.</summary>
    public void Show(double widthPx, double heightPx)
    {
        (WidthPx, HeightPx) = (widthPx, heightPx);
        (QuarterTurnCount, IsFlipped, HasStarted, RoundCount, _asked) = (0, false, false, 1, null);
        _marks.Clear();
        _skipped.Clear();
        _past.Clear();
    }

    /// <summary>Begins to ask for marks.</summary>
    public void Start() => HasStarted = true;

    /// <summary>Marks what is asked now.</summary>
    /// <returns>The step that was marked; none where nothing is asked.</returns>
    public PhotoStep? Place(PointPx at)
    {
        if (!HasPicture || Current is not { } step) return null;
        HasStarted = true;
        Remember();
        at = Inside(at);
        // Asked for again by hand, a mark is replaced; in a second round it is added.
        _marks[step] = _asked is null && CountOf(step) > 0 ? [.. _marks[step], at] : [at];
        _skipped.Remove(step);
        _asked = null;
        return step;
    }

    /// <summary>Moves a mark.</summary>
    /// <param name="step">One that is marked.</param>
    /// <param name="at">Where to.</param>
    /// <param name="isNew">Whether this begins a new move, to be undone as one.</param>
    public void Move(PhotoStep step, PointPx at, bool isNew)
    {
        if (CountOf(step) == 0) return;
        if (isNew) Remember();
        _marks[step] = [Inside(at)];
    }

    /// <summary>Goes on without the mark that is asked now.</summary>
    public void Skip()
    {
        if (Current is not { IsOptional: true } step) return;
        Remember();
        _skipped.Add(step);
        _asked = null;
    }

    /// <summary>Asks for a step by hand, marked or not.</summary>
    public void Ask(PhotoStep step) => _asked = step;

    /// <summary>Begins a second round, to measure one's own error.</summary>
    public void Repeat()
    {
        Remember();
        RoundCount = 2;
    }

    /// <summary>The marks as the engine takes them.</summary>
    public MarkedPicture ToPicture() => new(
        [.. from step in Steps where step.Landmark is not null && CountOf(step) > 0 from at in _marks[step] select new MarkedPoint(step.Landmark!.Value, step.Side, at)],
        [.. _touching.Select(Contact)])
    {
        QuarterTurnCount = QuarterTurnCount & 3,
        Level = Level,
        Upright = Upright(),
    };

    private static PointPx Mean(PointPx[] marks) => 1.0 / marks.Length * marks.Aggregate(new PointPx(0, 0), (sum, at) => sum + at);

    private PointPx Inside(PointPx at) => new(Math.Clamp(at.XPx, 0, WidthPx), Math.Clamp(at.YPx, 0, HeightPx));

    // Which end is the upper one is seen from the picture, not from the order of the clicks.
    private (PointPx Top, PointPx Bottom)? Upright()
    {
        var (a, b) = (PhotoStep.Upright(0), PhotoStep.Upright(1));
        if (CountOf(a) == 0 || CountOf(b) == 0) return null;
        var (first, second) = (Mean(_marks[a]), Mean(_marks[b]));
        var turn = new PhotoTurn(WidthPx, HeightPx, QuarterTurnCount);
        return turn.Shown(first).YPx <= turn.Shown(second).YPx ? (first, second) : (second, first);
    }

    private MarkedContact Contact(PhotoTouch touch)
    {
        var known = EndsOf(touch.Part);
        return new MarkedContact(touch.Part, touch.Side, known.Count > 0
            ? [.. known.Select(ContactEnd.Of)]
            : [.. ContactSteps().Where(s => s.Part == touch.Part && s.Side == touch.Side && CountOf(s) > 0).Select(s => ContactEnd.Of(Mean(_marks[s])))]);
    }
}
