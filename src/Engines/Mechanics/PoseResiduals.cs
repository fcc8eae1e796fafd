namespace Slantwise.Engines.Mechanics;

/// <summary>By how much a pose misses each goal, and how that changes with each unknown.</summary>
internal sealed class PoseResiduals
{
    // A radian of direction counts like a tenth of a stature: the length of a hand or foot that it would move.
    private const double DirectionH = .1;
    private const double DepthFraction = .1;
    // The cosine of 30°: about as far as feet roll.
    private const double FlatEnough = .866;
    private const int RowsAGoal = 3;

    private readonly PoseChain _chain;
    private readonly double[] _missedH;
    private readonly double[]? _slopes;
    private int _row;

    private PoseResiduals(PoseChain chain, int goalCount, bool withSlopes)
    {
        _chain = chain;
        _missedH = new double[RowsAGoal * goalCount];
        _slopes = withSlopes ? new double[_missedH.Length * PoseChain.UnknownCount] : null;
    }

    /// <summary>How much each goal is missed, three numbers a goal; what a goal does not need is 0.</summary>
    public static double[] MissedH(PoseChain chain, IReadOnlyList<PoseGoal> goals) => Of(chain, goals, withSlopes: false)._missedH;

    /// <summary>The largest of those numbers; how near or far a point is seen does not count.</summary>
    public static double MostMissedH(PoseChain chain, IReadOnlyList<PoseGoal> goals)
    {
        var (missedH, mostH) = (MissedH(chain, goals), 0.0);
        for (var row = 0; row < missedH.Length; row++)
            if (goals[row / RowsAGoal] is not PoseGoal.Seen || row % RowsAGoal != 2) mostH = Math.Max(mostH, Math.Abs(missedH[row]));
        return mostH;
    }

    /// <summary>How much each goal is missed, and a row of slopes for each number.</summary>
    public static (double[] MissedH, double[] Slopes) WithSlopes(PoseChain chain, IReadOnlyList<PoseGoal> goals)
    {
        var all = Of(chain, goals, withSlopes: true);
        return (all._missedH, all._slopes!);
    }

    private static PoseResiduals Of(PoseChain chain, IReadOnlyList<PoseGoal> goals, bool withSlopes)
    {
        var all = new PoseResiduals(chain, goals.Count, withSlopes);
        for (var i = 0; i < goals.Count; i++)
        {
            all._row = RowsAGoal * i;
            all.Add(goals[i]);
        }
        return all;
    }

    private void Add(PoseGoal goal)
    {
        switch (goal)
        {
            case PoseGoal.OnFloor g: Take(Lowest(g.Contact).ZH, u => LowestSlope(g.Contact, u).ZH); break;
            case PoseGoal.Flat g: AddFlat(g.Contact); break;
            case PoseGoal.Apart g:
                Take((Lowest(g.Contact) - Lowest(g.From)).OnFloor - g.By, u => (LowestSlope(g.Contact, u) - LowestSlope(g.From, u)).OnFloor);
                break;
            case PoseGoal.Resting g: AddResting(g); break;
            case PoseGoal.CentreOver g:
                Take((_chain.Skeleton.CentreOfMass(BodyTable.Mean) - Lowest(g.From)).OnFloor - g.By, u => (CentreSlope(u) - LowestSlope(g.From, u)).OnFloor);
                break;
            case PoseGoal.Angle g: AddAngle(g); break;
            case PoseGoal.Placed g:
                Take(Lowest(g.Contact) - new Point3(g.At.XH, g.At.YH, 0), u => LowestSlope(g.Contact, u));
                break;
            case PoseGoal.Turned g: AddTurned(g); break;
            case PoseGoal.Along g: AddAlong(g); break;
            case PoseGoal.Held g: Take(Middle(g.Contact) - g.At, u => MiddleSlope(g.Contact, u)); break;
            case PoseGoal.Seen g: AddSeen(g); break;
            case PoseGoal.Above g: AddAbove(g); break;
            case PoseGoal.Facing g: AddFacing(g); break;
            default: throw new ArgumentOutOfRangeException(nameof(goal), goal, "No such goal.");
        }
    }

    // The sole faces down in its own axes; the palm faces the body: right for the left hand.
    private void AddFlat(Contact contact)
    {
        var (segment, frame) = Frame(contact);
        var own = ContactPatch.Of(contact.Part).Segment == SegmentKind.Hand ? new Point3(0, contact.Side == Side.Left ? -1 : 1, 0) : new Point3(0, 0, -1);
        var outward = frame.Turned.Of(own);
        Take(DirectionH * (outward with { ZH = Math.Max(0, outward.ZH) }), u =>
        {
            var slope = _chain.SlopeOfDirection(u, segment, outward);
            return DirectionH * (slope with { ZH = outward.ZH > 0 ? slope.ZH : 0 });
        });
    }

    private void AddResting(PoseGoal.Resting goal)
    {
        var apartH = ContactPatch.Of(goal.Contact.Part).RadiusH + ContactPatch.Of(goal.On.Part).RadiusH;
        Take(Middle(goal.Contact) - Middle(goal.On) - new Point3(0, 0, apartH), u => MiddleSlope(goal.Contact, u) - MiddleSlope(goal.On, u));
    }

    private void AddAngle(PoseGoal.Angle goal)
    {
        var joint = 0;
        while (Pose.JointsInOrder[joint] != (goal.Joint, Pose.IsPaired(goal.Joint) ? goal.Side : Side.Middle)) joint++;
        Take(DirectionH * (_chain.AnglesRad[joint] - goal.AngleRad), u => u == joint ? DirectionH : 0);
    }

    // The turn from the wished axes to those there are, as axis times angle, good for small ones and of the right sense for all.
    private void AddTurned(PoseGoal.Turned goal)
    {
        var (segment, frame) = Frame(goal.Contact);
        var (wish, have) = (goal.As, frame.Turned);
        var missed = Point3.Cross(wish.X, have.X) + Point3.Cross(wish.Y, have.Y) + Point3.Cross(wish.Z, have.Z);
        Take(.5 * DirectionH * missed, u =>
        {
            var axis = _chain.Axis(u, segment);
            return .5 * DirectionH * (Point3.Cross(wish.X, Point3.Cross(axis, have.X)) + Point3.Cross(wish.Y, Point3.Cross(axis, have.Y)) + Point3.Cross(wish.Z, Point3.Cross(axis, have.Z)));
        });
    }

    private void AddAlong(PoseGoal.Along goal)
    {
        var patch = ContactPatch.Of(goal.Contact.Part);
        var (segment, frame) = Frame(goal.Contact);
        var heading = frame.Turned.Of(patch.Heading);
        var (towards, lies) = (1 / goal.Towards.LengthH * goal.Towards, patch.Part is ContactPart.Foot or ContactPart.Forearm or ContactPart.Shank or ContactPart.Thigh);
        // A sole may roll to its sides, within reason.
        var up = frame.Turned.Z;
        var rolled = patch.Part == ContactPart.Foot ? Math.Max(0, FlatEnough - up.ZH) : 0;
        Point3 Missed(Point3 along, double roll) => DirectionH * new Point3(towards.XH * along.YH - towards.YH * along.XH, lies ? along.ZH : 0, roll);
        Take(Missed(heading, rolled), u => Missed(_chain.SlopeOfDirection(u, segment, heading), rolled > 0 ? -_chain.SlopeOfDirection(u, segment, up).ZH : 0));
    }

    private void AddFacing(PoseGoal.Facing goal)
    {
        var (front, towards) = (_chain.Pelvis.Turned.X, 1 / goal.Towards.LengthH * goal.Towards);
        double Aside(Point3 v) => DirectionH * (towards.XH * v.YH - towards.YH * v.XH);
        Take(Aside(front), u => Aside(_chain.SlopeOfDirection(u, 0, front)));
    }

    private void AddAbove(PoseGoal.Above goal)
    {
        var segment = PoseChain.Index(goal.Segment, goal.Side);
        var at = _chain.Skeleton.Frames[segment].At(goal.Own);
        if (at.ZH < goal.HeightH) Take(at.ZH - goal.HeightH, u => _chain.Slope(u, segment, at).ZH);
    }

    // Two numbers across the line of sight, and a weak one along it: a hand that is lifted does not swing to the side for nothing.
    private void AddSeen(PoseGoal.Seen goal)
    {
        var segment = PoseChain.Index(goal.Segment, goal.Side);
        var at = _chain.Skeleton.Frames[segment].At(goal.Own);
        var sight = 1 / goal.Sight.LengthH * goal.Sight;
        var first = Point3.Cross(sight, Math.Abs(sight.ZH) < .9 ? new(0, 0, 1) : new(1, 0, 0));
        first = 1 / first.LengthH * first;
        var second = Point3.Cross(sight, first);
        Point3 Seen(Point3 v) => new(Point3.Dot(v, first), Point3.Dot(v, second), DepthFraction * Point3.Dot(v, sight));
        Take(Seen(at - goal.At), u => Seen(_chain.Slope(u, segment, at)));
    }

    private (int Segment, SegmentFrame Frame) Frame(Contact contact)
    {
        var segment = PoseChain.Index(ContactPatch.Of(contact.Part).Segment, contact.Side);
        return (segment, _chain.Skeleton.Frames[segment]);
    }

    private Point3 Middle(Contact contact) => Frame(contact).Frame.At(ContactPatch.Of(contact.Part).Centre);

    private Point3 MiddleSlope(Contact contact, int unknown) => _chain.Slope(unknown, Frame(contact).Segment, Middle(contact));

    private Point3 Lowest(Contact contact) => ContactPatch.Of(contact.Part).Lowest(Frame(contact).Frame);

    // What is straight below the middle of a round part moves as the middle does.
    private Point3 LowestSlope(Contact contact, int unknown) => MiddleSlope(contact, unknown);

    private Point3 CentreSlope(int unknown)
    {
        var masses = Skeleton.MassesOf(BodyTable.Mean);
        var sum = new Point3(0, 0, 0);
        for (var i = 0; i < masses.Count; i++)
            sum += masses[i].MassFraction * _chain.Slope(unknown, i, _chain.Skeleton.Frames[i].At(masses[i].Own));
        return sum;
    }

    private void Take(double missedH, Func<int, double> slope) => Take(new Point3(missedH, 0, 0), u => new Point3(slope(u), 0, 0));

    private void Take(Point2 missed, Func<int, Point2> slope) => Take(new Point3(missed.XH, missed.YH, 0), u => new Point3(slope(u).XH, slope(u).YH, 0));

    private void Take(Point3 missed, Func<int, Point3> slope)
    {
        (_missedH[_row], _missedH[_row + 1], _missedH[_row + 2]) = (missed.XH, missed.YH, missed.ZH);
        if (_slopes is null) return;
        for (var u = 0; u < PoseChain.UnknownCount; u++)
        {
            var at = slope(u);
            var first = _row * PoseChain.UnknownCount + u;
            (_slopes[first], _slopes[first + PoseChain.UnknownCount], _slopes[first + 2 * PoseChain.UnknownCount]) = (at.XH, at.YH, at.ZH);
        }
    }
}
