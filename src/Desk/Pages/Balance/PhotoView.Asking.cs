using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Desk.Pages.Balance;

/// <content>What is asked, how that changes, and undoing.</content>
public sealed partial class PhotoView
{
    private static readonly Landmark[] Arm = [Landmark.Elbow, Landmark.Wrist, Landmark.Fingertip];
    private readonly Stack<Before> _past = [];

    private Landmark[] Leg => IsFront ? [Landmark.Knee, Landmark.Ankle, Landmark.Toe] : [Landmark.Knee, Landmark.Ankle, Landmark.Heel, Landmark.Toe];

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => _past.Count > 0;

    /// <summary>Takes back the last mark, move, skip or splitting of limbs.</summary>
    public void Undo()
    {
        if (!_past.TryPop(out var before)) return;
        _marks.Clear();
        foreach (var (step, at) in before.Marks) _marks[step] = at;
        _skipped.Clear();
        _skipped.UnionWith(before.Skipped);
        _touching.Clear();
        _touching.AddRange(before.Touching);
        (AreArmsApart, AreLegsApart, RoundCount, _asked) = (before.AreArmsApart, before.AreLegsApart, before.RoundCount, null);
    }

    /// <summary>Turns the picture clockwise by a quarter, because it is not the right way up.</summary>
    public void TurnQuarter() => QuarterTurnCount = (QuarterTurnCount + 1) & 3;

    /// <summary>Shows the picture upside down for marking, or the right way up again.</summary>
    public void Flip() => IsFlipped = !IsFlipped;

    /// <summary>Asks for the waist, or not.</summary>
    public void SetBackBent(bool isBent) => IsBackBent = isBent;

    /// <summary>Says from what gravity is known.</summary>
    public void SetLevel(LevelBasis level) => Level = level;

    /// <summary>Asks for both arms, or lets one mark stand for both.</summary>
    public void SetArmsApart(bool isApart)
    {
        if (IsFront || AreArmsApart == isApart) return;
        Remember();
        AreArmsApart = isApart;
        Split(isApart, Arm, PhotoTouch.IsOfArm);
    }

    /// <summary>Asks for both legs, or lets one mark stand for both.</summary>
    public void SetLegsApart(bool isApart)
    {
        if (IsFront || AreLegsApart == isApart) return;
        Remember();
        AreLegsApart = isApart;
        Split(isApart, Leg, PhotoTouch.IsOfLeg);
    }

    /// <summary>Says that something touches the floor, or that it does not.</summary>
    public void SetTouching(PhotoTouch touch, bool isTouching)
    {
        _touching.Remove(touch);
        if (isTouching) _touching.Add(touch);
    }

    /// <summary>What of a part can touch in this picture: both together, or each side.</summary>
    public IReadOnlyList<PhotoTouch> TouchesOf(ContactPart part)
    {
        var isApart = PhotoTouch.IsOfArm(part) ? AreArmsApart : PhotoTouch.IsOfLeg(part) && AreLegsApart;
        return isApart ? [new(part, Side.Left), new(part, Side.Right)] : [new(part, Side.Middle)];
    }

    private IEnumerable<PhotoStep> BodySteps()
    {
        var arms = AreArmsApart ? Side.Left : Side.Middle;
        var legs = AreLegsApart ? Side.Left : Side.Middle;
        yield return PhotoStep.Of(Landmark.Crown, Side.Middle);
        yield return PhotoStep.Of(Landmark.Jaw, Side.Middle);
        // Straight from the side one shoulder hides the other, and one hip.
        foreach (var step in Limb(IsFront ? arms : Side.Middle, Landmark.Shoulder).Concat(Limb(arms, Arm))) yield return step;
        if (AreArmsApart)
            foreach (var step in (IsFront ? Limb(Side.Right, Landmark.Shoulder) : []).Concat(Limb(Side.Right, Arm))) yield return step;
        if (IsBackBent) yield return PhotoStep.Of(Landmark.Waist, Side.Middle);
        foreach (var step in Limb(IsFront ? legs : Side.Middle, Landmark.Hip).Concat(Limb(legs, Leg))) yield return step;
        if (AreLegsApart)
            foreach (var step in (IsFront ? Limb(Side.Right, Landmark.Hip) : []).Concat(Limb(Side.Right, Leg))) yield return step;
    }

    private IEnumerable<PhotoStep> ContactSteps() =>
        from touch in _touching
        where EndsOf(touch.Part).Count == 0
        from end in new[] { 0, 1 }
        select PhotoStep.Of(touch.Part, touch.Side, end);

    // From the front a foot shows its breadth, not heel and toe: its ends are marked for themselves.
    private IReadOnlyList<Landmark> EndsOf(ContactPart part) => IsFront ? [] : MarkedContact.EndsOf(part);

    private static IEnumerable<PhotoStep> Limb(Side side, params Landmark[] landmarks) => landmarks.Select(l => PhotoStep.Of(l, side));

    // What was marked for both becomes the nearer one's; put together again, the nearer one stands for both.
    private void Split(bool isApart, Landmark[] landmarks, Func<ContactPart, bool> isOfLimb)
    {
        var (from, to) = isApart ? (Side.Middle, Side.Left) : (Side.Left, Side.Middle);
        foreach (var landmark in landmarks) Rename(PhotoStep.Of(landmark, from), PhotoStep.Of(landmark, to));
        var touching = _touching.ToArray();
        _touching.Clear();
        foreach (var touch in touching)
        {
            foreach (var end in new[] { 0, 1 })
                if (isOfLimb(touch.Part)) Rename(PhotoStep.Of(touch.Part, from, end), PhotoStep.Of(touch.Part, to, end));
            IReadOnlyList<PhotoTouch> named = isOfLimb(touch.Part) ? TouchesOf(touch.Part) : [touch];
            _touching.AddRange(named.Except(_touching));
        }
    }

    private void Rename(PhotoStep from, PhotoStep to)
    {
        if (_marks.Remove(from, out var at)) _marks[to] = at;
        if (_skipped.Remove(from)) _skipped.Add(to);
    }

    private void Remember() => _past.Push(new Before(new(_marks), [.. _skipped], [.. _touching], AreArmsApart, AreLegsApart, RoundCount));

    private sealed record Before(
        Dictionary<PhotoStep, PointPx[]> Marks, HashSet<PhotoStep> Skipped, PhotoTouch[] Touching, bool AreArmsApart, bool AreLegsApart, int RoundCount);
}
