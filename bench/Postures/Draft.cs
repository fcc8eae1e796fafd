using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Bench.Postures;

/// <summary>One body of a draft: where the search begins and what it should reach.</summary>
internal sealed class DraftBody
{
    public Pose Guess { get; set; } = Pose.Upright;

    public bool IsMirrored { get; set; }

    public List<Contact> Touches { get; } = [];

    public List<Contact> Wall { get; } = [];

    public List<PoseGoal> Goals { get; } = [];

    public List<Reach> Reaches { get; } = [];

    public List<Join> Joins { get; } = [];

    // Half the distance between a pair of parts, where the draft says it: "over" then needs no side.
    public Dictionary<ContactPart, double> HalfWidthsH { get; } = [];
}

/// <summary>A posture as an author writes it down.</summary>
internal sealed record Draft(string Key, PostureGroup Group, DraftBody Body, DraftBody? Partner);
