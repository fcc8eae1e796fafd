using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Bench.Postures;

/// <summary>Reads drafts.txt; its words are explained in README.md.</summary>
internal static class DraftReader
{
    public static List<Draft> Read(IEnumerable<string> lines)
    {
        var drafts = new List<Draft>();
        foreach (var (line, number) in lines.Select((line, i) => (line.Split('#')[0], i + 1)))
        {
            var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words.Length == 0) continue;
            try
            {
                Take(words, drafts);
            }
            catch (Exception e) when (e is FormatException or ArgumentException or IndexOutOfRangeException)
            {
                throw new InvalidDataException($"drafts.txt:{number}: {line.Trim()}: {e.Message}", e);
            }
        }
        return drafts;
    }

    private static void Take(string[] words, List<Draft> drafts)
    {
        if (words[0] == "posture")
        {
            drafts.Add(new Draft(words[1], Enum.Parse<PostureGroup>(words[2], ignoreCase: true), new DraftBody(), null));
            return;
        }
        if (words[0] == "partner")
        {
            drafts[^1] = drafts[^1] with { Partner = Partner(drafts[^1].Body, words) };
            return;
        }
        var body = drafts[^1].Partner ?? drafts[^1].Body;
        switch (words[0])
        {
            case "pose": Pose(body, words); break;
            case "touches": body.Touches.AddRange(words[1..].SelectMany(Contacts)); break;
            case "wall": body.Wall.AddRange(words[1..].SelectMany(Contacts)); break;
            case "floor": body.Goals.AddRange(words[1..].SelectMany(Contacts).Select(c => new PoseGoal.OnFloor(c))); break;
            case "flat": body.Goals.AddRange(words[1..].SelectMany(Contacts).Select(c => new PoseGoal.Flat(c))); break;
            case "apart": Apart(body, words); break;
            case "wide": Wide(body, words); break;
            case "rest": body.Goals.AddRange(Pairs(words[1], words[3]).Select(p => new PoseGoal.Resting(p.One, p.Other))); break;
            case "over": Over(body, words); break;
            case "reach": Lay(body, words); break;
            case "joins": body.Joins.AddRange(words[1..].Select(w => w.Split('=')).SelectMany(w => Pairs(w[0], w[1])).Select(p => new Join(p.One, p.Other))); break;
            default: throw new FormatException($"'{words[0]}' is no word of a draft.");
        }
    }

    // "partner": a new body. "partner like": the first's pose and goals. "partner mirrored": the same, left for right.
    private static DraftBody Partner(DraftBody first, string[] words)
    {
        var partner = new DraftBody();
        if (words.Length == 1) return partner;
        partner.IsMirrored = words[1] == "mirrored";
        partner.Guess = first.Guess;
        partner.Touches.AddRange(first.Touches);
        partner.Goals.AddRange(first.Goals);
        partner.Reaches.AddRange(first.Reaches);
        return partner;
    }

    // "bow 90 kneeFlexion.left 40!": an angle with ! is kept, the others are where the search begins.
    private static void Pose(DraftBody body, string[] words)
    {
        for (var i = 1; i < words.Length; i += 2)
        {
            var isKept = words[i + 1].EndsWith('!');
            var angleRad = Number(words[i + 1].TrimEnd('!')) * Math.PI / 180;
            var pose = body.Guess;
            switch (words[i])
            {
                case "bow": body.Guess = pose.Placed(angleRad, pose.LeanRad, pose.TurnRad); continue;
                case "lean": body.Guess = pose.Placed(pose.BowRad, angleRad, pose.TurnRad); continue;
                case "turn": body.Guess = pose.Placed(pose.BowRad, pose.LeanRad, angleRad); continue;
            }
            var parts = words[i].Split('.');
            var joint = Enum.Parse<Joint>(parts[0], ignoreCase: true);
            var sides = parts.Length > 1 ? [Enum.Parse<Side>(parts[1], ignoreCase: true)]
                : Engines.Mechanics.Pose.IsPaired(joint) ? new[] { Side.Left, Side.Right } : [Side.Middle];
            foreach (var side in sides)
            {
                body.Guess = body.Guess.With(joint, side, angleRad);
                body.Goals.RemoveAll(g => g is PoseGoal.Angle a && a.Joint == joint && a.Side == side);
                if (isKept) body.Goals.Add(new PoseGoal.Angle(joint, side, angleRad));
            }
        }
    }

    private static void Apart(DraftBody body, string[] words)
    {
        var (xH, yH) = (Number(words[4]), Number(words[5]));
        foreach (var (one, other) in Pairs(words[1], words[3]))
            body.Goals.Add(new PoseGoal.Apart(one, other, new Point2(xH, IsOneOfBoth(words[1], one) ? -yH : yH)));
    }

    private static void Wide(DraftBody body, string[] words)
    {
        var sides = Contacts(words[1]);
        body.HalfWidthsH[sides[0].Part] = Number(words[2]);
        body.Goals.Add(new PoseGoal.Apart(sides[0], sides[1], new Point2(0, 2 * Number(words[2]))));
    }

    private static void Over(DraftBody body, string[] words)
    {
        var from = Contacts(words[1])[0];
        var yH = words.Length > 3 ? Number(words[3]) : from.Side == Side.Middle ? 0 : -body.HalfWidthsH[from.Part];
        body.Goals.Add(new PoseGoal.CentreOver(from, new Point2(Number(words[2]), yH)));
    }

    private static void Lay(DraftBody body, string[] words)
    {
        foreach (var (hand, to) in Pairs(words[1], words[3]))
            body.Reaches.Add(new Reach(hand, to, new Point3(Number(words[4]), (IsOneOfBoth(words[1], hand) ? -1 : 1) * Number(words[5]), Number(words[6])),
                body.Touches.Contains(new(ContactPart.Elbow, hand.Side))));
    }

    // A paired part without a side is both, and what is said of the left holds mirrored for the right.
    private static Contact[] Contacts(string name)
    {
        var parts = name.Split('.');
        var part = Enum.Parse<ContactPart>(parts[0], ignoreCase: true);
        if (parts.Length > 1) return [new(part, Enum.Parse<Side>(parts[1], ignoreCase: true))];
        return SegmentFigures.IsPaired(ContactPatch.Of(part).Segment) ? [new(part, Side.Left), new(part, Side.Right)] : [new(part, Side.Middle)];
    }

    private static (Contact One, Contact Other)[] Pairs(string one, string other)
    {
        var (ones, others) = (Contacts(one), Contacts(other));
        return [.. ones.Select((c, i) => (c, others[others.Length == 1 ? 0 : i]))];
    }

    private static bool IsOneOfBoth(string name, Contact contact) => !name.Contains('.') && contact.Side == Side.Right;

    private static double Number(string word) => double.Parse(word, CultureInfo.InvariantCulture);
}
