using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>A sitting in the studio: the posture as it is now, what the engine says about it, and the way back.</summary>
public sealed partial class StudioSession
{
    private const int StepsAtMost = 200;
    private const double ToleranceDeg = 3;

    private readonly Stack<Posture> _undo = new(), _redo = new();
    private Posture _start;
    private PostureEdit? _edit;
    private StudioHandle? _dragged;
    private SettledPosture _before;
    private Point2 _offsetBefore;
    private (bool IsPartner, Joint Joint, Side Side)? _turning;

    /// <summary>Begins with a posture that can stand on the floor.</summary>
    /// <param name="posture">From the library or a file.</param>
    public StudioSession(Posture posture)
    {
        _start = posture;
        _before = Settled = posture.Settle();
        Balance = PostureBalance.Of(Settled);
        Tolerance = ToleranceOf(Settled, Balance);
    }

    /// <summary>The posture as it is now.</summary>
    public Posture Posture => Settled.Posture;

    /// <summary>The posture on the floor.</summary>
    public SettledPosture Settled { get; private set; }

    /// <summary>What the engine says about it.</summary>
    public PostureBalance Balance { get; private set; }

    /// <summary>How forgiving it is of small errors; none for two bodies.</summary>
    public BalanceTolerance? Tolerance { get; private set; }

    /// <summary>Where the floor's origin lies, seen from where it lay when the posture was taken: contacts that stay are drawn where they were.</summary>
    public Point2 Offset { get; private set; }

    /// <summary>What kept the last move from going all the way; empty where nothing did.</summary>
    public IReadOnlyList<JointStop> Stops { get; private set; } = [];

    /// <summary>Whether the last move stopped short.</summary>
    public bool IsStopped { get; private set; }

    /// <summary>Whether something is being dragged.</summary>
    public bool IsDragging => _dragged is not null;

    /// <summary>What is being dragged; none when nothing is.</summary>
    public StudioHandle? Dragged => _dragged;

    /// <summary>Whether the posture is no longer the one that was taken.</summary>
    public bool IsChanged => _undo.Count > 0;

    /// <summary>Whether there is a step to take back.</summary>
    public bool CanUndo => _undo.Count > 0;

    /// <summary>Whether a step was taken back.</summary>
    public bool CanRedo => _redo.Count > 0;

    /// <summary>Counts the postures taken: a new one is drawn in a new frame.</summary>
    public int TakenCount { get; private set; }

    /// <summary>Everything that can be dragged.</summary>
    public IReadOnlyList<StudioHandle> Handles => [.. StudioHandle.Of(Settled.Body, false), .. Settled.Partner is { } partner ? StudioHandle.Of(partner, true) : []];

    /// <summary>The body a handle sits on.</summary>
    /// <param name="handle">One of this session's.</param>
    public SettledBody BodyOf(StudioHandle handle) => handle.IsPartner ? Settled.Partner! : Settled.Body;

    /// <summary>Takes another posture; the steps begin anew.</summary>
    /// <param name="posture">From the library or a file.</param>
    public void Take(Posture posture)
    {
        End();
        _start = posture;
        _undo.Clear();
        _redo.Clear();
        Show(posture.Settle(), new(0, 0));
        TakenCount++;
    }

    /// <summary>Begins to drag.</summary>
    /// <param name="handleId">A handle's name; an unknown one drags nothing.</param>
    /// <returns>The handle; none where there is no such one.</returns>
    public StudioHandle? Begin(string handleId)
    {
        End();
        if (Handles.FirstOrDefault(h => h.Id == handleId) is not { } handle) return null;
        (_dragged, _before, _offsetBefore) = (handle, Settled, Offset);
        _edit = PostureEdit.Of(Settled, handle.IsPartner);
        return handle;
    }

    /// <summary>Drags what was begun: a contact along the floor, a joint across the line of sight.</summary>
    /// <param name="by">How far from where the drag began, in statures.</param>
    /// <param name="sight">From where it is seen; a point moves across this.</param>
    public void Drag(Point3 by, Point3 sight)
    {
        if (_edit is not { } edit || _dragged is not { } handle) return;
        Taken(handle.Contact is { } contact
            ? edit.Follow([new PoseGoal.Placed(contact, Middle(edit.Body, contact) + by.OnFloor)], [contact])
            : edit.Follow([new PoseGoal.Seen(handle.Segment, handle.Side, handle.Own, handle.At(edit.Body) + by, sight)], []));
    }

    /// <summary>Ends a drag: it is one step to undo.</summary>
    public void End()
    {
        var wasDragging = IsDragging;
        (_edit, _dragged, _turning) = (null, null, null);
        if (wasDragging && !ReferenceEquals(_before, Settled)) Remember(_before.Posture);
    }

    /// <summary>Sets a joint; contacts stay and the rest follows.</summary>
    /// <param name="isPartner">Whether of the second body.</param>
    /// <param name="joint">The movement.</param>
    /// <param name="side">Left or right for a paired joint, else Middle.</param>
    /// <param name="angleDeg">The wished angle, taken to the joint's limits.</param>
    public void SetAngle(bool isPartner, Joint joint, Side side, double angleDeg)
    {
        // A slider sends many angles: they are one step to undo, and the body stays near to where the first one found it.
        var isGoingOn = _turning == (isPartner, joint, side) && _edit is not null;
        if (!isGoingOn)
        {
            End();
            (_before, _offsetBefore, _edit) = (Settled, Offset, PostureEdit.Of(Settled, isPartner));
        }
        var (leastDeg, mostDeg) = JointLimits.Of(joint);
        Taken(_edit!.Follow([new PoseGoal.Angle(joint, side, Math.Clamp(angleDeg, leastDeg, mostDeg) * Math.PI / 180)], []));
        _turning = (isPartner, joint, side);
        if (!isGoingOn && !ReferenceEquals(_before, Settled)) Remember(_before.Posture);
    }

    /// <summary>Moves a contact to a place on the floor.</summary>
    /// <param name="isPartner">Whether of the second body.</param>
    /// <param name="contact">The contact.</param>
    /// <param name="place">In the floor's frame.</param>
    public void SetPlace(bool isPartner, Contact contact, Point2 place) => Change(isPartner, _ => ([new PoseGoal.Placed(contact, place)], [contact]));

    /// <summary>Bows or leans a body that has one contact: with more, they say how it is tilted.</summary>
    /// <param name="bowDeg">To the front.</param>
    /// <param name="leanDeg">To the left.</param>
    public void SetTilt(double bowDeg, double leanDeg)
    {
        var pose = Posture.Pose.Placed(bowDeg * Math.PI / 180, leanDeg * Math.PI / 180, Posture.Pose.TurnRad);
        Step(Posture with { Pose = pose });
    }

    /// <summary>Takes a contact off the floor; nothing else moves. The last one stays.</summary>
    /// <param name="contact">One of the first body's.</param>
    public void Lift(Contact contact)
    {
        if (Posture.Contacts.Count > 1) Step(Posture with { Contacts = [.. Posture.Contacts.Where(c => c != contact)] });
    }

    /// <summary>Puts another part on the floor, if it can be brought there.</summary>
    /// <param name="contact">A part of the first body that does not touch yet.</param>
    public void PutDown(Contact contact)
    {
        if (Posture.Contacts.Contains(contact)) return;
        var edit = PostureEdit.Of(Settled);
        var move = edit.Follow([new PoseGoal.OnFloor(contact)], []);
        var wish = move.Settled.Posture with { Contacts = [.. Posture.Contacts, contact] };
        (Stops, IsStopped) = (move.Stops, !wish.Settle().IsTouching);
        if (!IsStopped) Step(wish);
    }

    /// <summary>Left for right, as in a mirror.</summary>
    public void Mirror() => Step(StudioMirror.Of(Posture));

    /// <summary>Back to the posture that was taken; this can be undone too.</summary>
    public void Reset()
    {
        Step(_start);
        TakenCount++;
    }

    /// <summary>Takes back a step.</summary>
    public void Undo()
    {
        End();
        if (!_undo.TryPop(out var posture)) return;
        _redo.Push(Posture);
        Show(posture.Settle(), Offset);
    }

    /// <summary>Takes a step again that was taken back.</summary>
    public void Redo()
    {
        End();
        if (!_redo.TryPop(out var posture)) return;
        _undo.Push(Posture);
        Show(posture.Settle(), Offset);
    }

    // A change made at once, not dragged: one step.
    private void Change(bool isPartner, Func<PostureEdit, (IReadOnlyList<PoseGoal> Wishes, IReadOnlyList<Contact> Sliding)> wish)
    {
        End();
        (_before, _offsetBefore) = (Settled, Offset);
        var edit = PostureEdit.Of(Settled, isPartner);
        var (wishes, sliding) = wish(edit);
        Taken(edit.Follow(wishes, sliding));
        if (!ReferenceEquals(_before, Settled)) Remember(_before.Posture);
    }

    private void Step(Posture posture)
    {
        End();
        var settled = posture.Settle();
        if (!settled.IsTouching)
        {
            (Stops, IsStopped) = ([], true);
            return;
        }
        Remember(Posture);
        Show(settled, Offset);
    }

    private void Taken(PostureMove move)
    {
        Show(move.Settled, _offsetBefore + move.Shift);
        (Stops, IsStopped) = (move.Stops, !move.IsMet);
    }

    private void Show(SettledPosture settled, Point2 offset)
    {
        (Stops, IsStopped, Offset) = ([], false, offset);
        if (ReferenceEquals(settled, Settled)) return;
        Settled = settled;
        Balance = PostureBalance.Of(settled);
        Tolerance = ToleranceOf(settled, Balance);
    }

    private void Remember(Posture posture)
    {
        _redo.Clear();
        _undo.Push(posture);
        if (_undo.Count <= StepsAtMost) return;
        var kept = _undo.Take(StepsAtMost).Reverse().ToArray();
        _undo.Clear();
        foreach (var step in kept) _undo.Push(step);
    }

    private static BalanceTolerance? ToleranceOf(SettledPosture settled, PostureBalance balance) => settled.Partner is null
        ? BalanceTolerance.Of(settled.Posture.Pose, settled.Body, balance.Whole, ToleranceDeg)
        : null;

    private static Point2 Middle(SettledBody body, Contact contact) => body.Contacts.First(c => c.Contact == contact).Middle;
}
