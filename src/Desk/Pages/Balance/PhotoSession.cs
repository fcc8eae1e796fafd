using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>One or two marked pictures and their answers. It lives as long as the page; nothing of it is stored.</summary>
public sealed class PhotoSession
{
    private readonly PhotoView _side = new(isFront: false);
    private PhotoView? _front;

    /// <summary>The pictures: the first one, and the second where there is one.</summary>
    public IReadOnlyList<PhotoView> Views => _front is null ? [_side] : [_side, _front];

    /// <summary>Which picture is being marked.</summary>
    public int ActiveNumber { get; private set; }

    /// <summary>The picture that is being marked.</summary>
    public PhotoView Active => Views[ActiveNumber];

    /// <summary>The stated error of a click, in hundredths of a stature.</summary>
    public double ClickHundredthsCount { get; private set; } = 100 * MarkedBalance.UsualClickSdH;

    /// <summary>An age whose median stature turns lengths into centimetres; none for hundredths of a stature.</summary>
    public int? AgeYearCount { get; set; }

    /// <summary>Whether the second camera stood where the right of the first picture is.</summary>
    public bool IsSecondFromRight { get; set; } = true;

    /// <summary>The stature that lengths are said for; none for hundredths.</summary>
    public double? StatureCm => AgeYearCount is { } age ? StatureMedian.OfCm(age, null) : null;

    /// <summary>Adds the second picture and goes to it.</summary>
    public void AddSecond()
    {
        _front ??= new PhotoView(isFront: true);
        ActiveNumber = 1;
    }

    /// <summary>Takes the second picture away.</summary>
    public void RemoveSecond() => (_front, ActiveNumber) = (null, 0);

    /// <summary>Goes to a picture.</summary>
    /// <param name="number">0 or 1.</param>
    public void Open(int number) => ActiveNumber = Math.Clamp(number, 0, Views.Count - 1);

    /// <summary>States the error of a click; out of 0.1 to 10 hundredths it is brought to the nearer end.</summary>
    public void SetClick(double hundredthsCount) =>
        ClickHundredthsCount = double.IsFinite(hundredthsCount) ? Math.Clamp(hundredthsCount, .1, 10) : 100 * MarkedBalance.UsualClickSdH;

    /// <summary>The measured error of a click, in statures; none where too little was marked twice.</summary>
    public double? MeasuredClickH(PhotoView view)
    {
        var points = view.ToPicture().Points;
        if (ClickSpread.Of(points) is not { DegreeCount: >= ClickSpread.EnoughCount } spread || ScaleOf(points) is not { } scale) return null;
        return Math.Clamp(spread.ClickSdPx / scale.PxPerH, .001, .1);
    }

    /// <summary>The answer of one picture; none while something needed is missing.</summary>
    public MarkedBalance? BalanceOf(PhotoView view)
    {
        var picture = view.ToPicture();
        return picture.Needs().Count > 0 || ScaleOf(picture.Points) is null
            ? null
            : MarkedBalance.Of(picture, MeasuredClickH(view) ?? ClickHundredthsCount / 100);
    }

    /// <summary>The answer of both pictures; none while one of them has none.</summary>
    public TwoViewBalance? Both() => _front is { } front && BalanceOf(_side) is { } first && BalanceOf(front) is { } second
        ? TwoViewBalance.Of(first, second, IsSecondFromRight)
        : null;

    // Two marks in one place have no length yet.
    private static MarkedScale? ScaleOf(IReadOnlyList<MarkedPoint> points)
    {
        var isMarked = points.Any(p => p.Landmark == Landmark.Shoulder) && points.Any(p => p.Landmark == Landmark.Hip);
        var apartPx = isMarked ? (points.First(p => p.Landmark == Landmark.Shoulder).At - points.First(p => p.Landmark == Landmark.Hip).At).LengthPx : 0;
        return apartPx > 0 ? MarkedScale.Of(points) : null;
    }
}
