using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Bench.Postures;

/// <summary>From a draft to a pose, and what to know about it.</summary>
internal static class Author
{
    // A search that cannot reach its goals evenly would otherwise lean to one side for a little more.
    private static readonly PoseGoal[] Straight =
        [.. new[] { Joint.SpineLean, Joint.SpineTwist, Joint.NeckLean, Joint.NeckTurn }.Select(j => new PoseGoal.Angle(j, Side.Middle, 0))];
    private const double SaidH = .004, TracesDeg = .25;

    public static (Pose Pose, List<string> Missed) Pose(DraftBody draft)
    {
        var missed = new List<string>();
        // Drafts say front and left of a body that faces the front; the turn comes last.
        var pose = Found(draft.Guess.Placed(draft.Guess.BowRad, draft.Guess.LeanRad, 0), draft, [], missed);
        if (draft.Reaches.Count > 0)
        {
            // Arms laid on the body move its centre a little: once more with the arms kept, and the hands laid again.
            var laid = draft.Reaches.Aggregate(pose, (p, reach) => reach.Of(p));
            missed.Clear();
            pose = draft.Reaches.Aggregate(Found(laid, draft, Arms(laid), missed), (p, reach) => reach.Of(p));
            missed.AddRange(draft.Reaches.Select(r => r.MissedH(pose)).Where(h => h > SaidH).Select(h => $"a hand is {h:0.000} from its place"));
        }
        if (IsMirrorImage(draft)) pose = Even(pose);
        if (draft.IsMirrored) pose = pose.Mirrored();
        return (pose.Placed(pose.BowRad, pose.LeanRad, pose.TurnRad + draft.Guess.TurnRad), missed);
    }

    private static Pose Found(Pose guess, DraftBody draft, IEnumerable<PoseGoal> more, List<string> missed)
    {
        PoseGoal[] goals = [.. draft.Touches.Select(c => new PoseGoal.OnFloor(c)), .. draft.Goals, .. more, .. IsMirrorImage(draft) ? Straight : []];
        if (goals.Length == 0) return guess;
        var found = PoseSearch.Fit(guess, goals);
        if (found.MissedH > SaidH) missed.Add($"goals missed by {found.MissedH:0.000}");
        return Tidied(found.Pose, guess);
    }

    // The search moves every joint a little: what it moved by less than the files say stays as the author wrote it.
    private static Pose Tidied(Pose pose, Pose guess)
    {
        foreach (var joint in Enum.GetValues<Joint>())
            foreach (var side in Engines.Mechanics.Pose.IsPaired(joint) ? new[] { Side.Left, Side.Right } : [Side.Middle])
                if (Math.Abs(pose.AngleRad(joint, side) - guess.AngleRad(joint, side)) < TracesDeg * Math.PI / 180) pose = pose.With(joint, side, guess.AngleRad(joint, side));
        return pose;
    }

    private static IEnumerable<PoseGoal> Arms(Pose pose) =>
        from joint in new[] { Joint.ShoulderFlexion, Joint.ShoulderAbduction, Joint.ShoulderRotation, Joint.ElbowFlexion }
        from side in new[] { Side.Left, Side.Right }
        select new PoseGoal.Angle(joint, side, pose.AngleRad(joint, side));

    public static void Report(Draft draft, Posture posture, List<string> missed, PostureReading reading)
    {
        var settled = (reading.Posture ?? posture).Settle();
        var balance = PostureBalance.Of(settled);
        var centre = balance.Whole.Centre;
        Console.WriteLine($"{draft.Key}: held {balance.IsHeld}, margin {balance.Whole.Margin.MarginH:0.000}, centre ({centre.XH:0.000} {centre.YH:0.000} {centre.ZH:0.000}), gap {settled.GapH:0.000}, turned "
            + string.Join(" ", settled.Bodies.Select(b => $"{b.TurnedRad * 180 / Math.PI:0.0}")) + (settled.IsInverted ? ", inverted" : "")
            + (balance.Whole.HeadFraction > 0 ? $", head {balance.Whole.HeadFraction:0.00}" : "")
            + (balance.Pull is { } pull ? $", pull {pull.LeastFraction:0.00}..{pull.MostFraction:0.00}" : "")
            + (balance.Carried is { } carried ? $", carried {carried.Margin.MarginH:0.000}" : "")
            + (balance.Wall is { } wall ? $", wall {wall.PushFraction:0.00}" : ""));
        foreach (var problem in reading.Problems) Console.WriteLine($"    !! {problem.Kind} {problem.At} {problem.Allowed}");
        foreach (var miss in missed) Console.WriteLine($"    {miss}");
        foreach (var join in posture.Partner?.Joins ?? [])
            if (settled.JoinGapH > SaidH) Console.WriteLine($"    {join.Own.Part} {join.Own.Side} from {join.On.Part} {join.On.Side}: {Towards(settled, join)}");
        foreach (var through in settled.Partner is null ? [] : Clearance.Between(settled.Body, settled.Partner)) Console.WriteLine($"    {through}");
        foreach (var body in settled.Bodies)
            foreach (var through in Clearance.Of(body)) Console.WriteLine($"    {through}");
    }

    private static string Towards(SettledPosture settled, Join join)
    {
        static Point3 At(SettledBody body, Contact contact)
        {
            var patch = ContactPatch.Of(contact.Part);
            return body.Skeleton.Frame(patch.Segment, contact.Side).At(patch.Centre);
        }

        var away = At(settled.Partner!, join.Own) - At(settled.Body, join.On);
        return $"({away.XH:0.000} {away.YH:0.000} {away.ZH:0.000})";
    }

    private static bool IsMirrorImage(DraftBody draft) => IsMirrorImage(draft.Guess)
        && draft.Touches.All(c => draft.Touches.Contains(Mirrored(c)));

    public static Contact Mirrored(Contact contact) => contact.Side == Side.Middle
        ? contact
        : contact with { Side = contact.Side == Side.Left ? Side.Right : Side.Left };

    private static bool IsMirrorImage(Pose pose) => pose.LeanRad == 0 && Enum.GetValues<Joint>().All(j =>
        pose.AngleRad(j, Side.Left) == (Engines.Mechanics.Pose.IsPaired(j) ? pose.AngleRad(j, Side.Right) : pose.Mirrored().AngleRad(j, Side.Middle)));

    // The search leaves a trace of its own rounding: the same to the tenth on both sides, and nothing sideways.
    private static Pose Even(Pose pose)
    {
        var (even, mirrored) = (pose.Placed(pose.BowRad, 0, 0), pose.Mirrored());
        foreach (var joint in Enum.GetValues<Joint>())
            even = even.With(joint, Side.Middle, (pose.AngleRad(joint, Side.Left) + mirrored.AngleRad(joint, Side.Left)) / 2);
        return even;
    }
}
