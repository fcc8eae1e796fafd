namespace Slantwise.Engines.Mechanics;

/// <summary>The lengths a figure is built from, in statures.</summary>
/// <remarks>
/// Limb lengths and heights are one set for both sexes. Source: [DrillisContini1966], as fig. 4.1 of [Winter2009]. The parts of the
/// trunk and the head are those of [DeLeva1996] over the mean statures of its samples, so that its centre fractions find the ends they
/// were measured between; its hip to shoulder, .287 and .296, agrees with the .288 used for the shoulders. What is marked "own" has no table.
/// </remarks>
public static class BodyLengths
{
    /// <summary>Ankle above the sole.</summary>
    public const double AnkleHeightH = .039;

    /// <summary>Knee to ankle.</summary>
    public const double ShankH = .246;

    /// <summary>Hip to knee.</summary>
    public const double ThighH = .245;

    /// <summary>Middle of the hips to middle of the shoulders: .818 − .530.</summary>
    public const double HipToShoulderH = .288;

    /// <summary>Shoulder to elbow.</summary>
    public const double UpperArmH = .186;

    /// <summary>Elbow to wrist.</summary>
    public const double ForearmH = .146;

    /// <summary>Wrist to fingertip.</summary>
    public const double HandH = .108;

    /// <summary>Wrist to the knuckle of the middle finger: 78.0 of 1735 mm and 86.2 of 1741 mm, their mean.</summary>
    public const double KnuckleH = (78.0 / 1735 + 86.2 / 1741) / 2;

    /// <summary>Heel to toe.</summary>
    public const double FootH = .152;

    /// <summary>Across the foot.</summary>
    public const double FootBreadthH = .055;

    /// <summary>The heel behind the ankle: a quarter of the foot, own.</summary>
    public const double HeelBehindAnkleH = .25 * FootH;

    /// <summary>Middle to one shoulder joint. The table's .129 reaches the outside of the shoulder; the joint lies .02 inside it, own.</summary>
    public const double HalfShoulderH = .109;

    /// <summary>Middle to one hip joint: about half of the .191 hip breadth lies between the joints, own.</summary>
    public const double HalfHipH = .048;

    /// <summary>Crown to the angle of the jaw: 200.2 of 1735 mm and 203.3 of 1741 mm, their mean.</summary>
    public const double HeadH = (200.2 / 1735 + 203.3 / 1741) / 2;

    /// <summary>The three parts of the trunk from below: 181.5, 205.3, 142.5 of 1735 mm and 145.7, 215.5, 170.7 of 1741 mm, their means.</summary>
    public const double LowerTrunkH = (181.5 / 1735 + 145.7 / 1741) / 2;

    /// <summary>The middle part of the trunk.</summary>
    public const double MiddleTrunkH = (205.3 / 1735 + 215.5 / 1741) / 2;

    /// <summary>The upper part of the trunk: it ends at the top of the breastbone, a little above the line of the shoulders.</summary>
    public const double UpperTrunkH = (142.5 / 1735 + 170.7 / 1741) / 2;

    /// <summary>The line of the shoulders in the upper part of the trunk, from its lower end.</summary>
    public const double ShoulderLineH = HipToShoulderH - LowerTrunkH - MiddleTrunkH;

    /// <summary>Top of the breastbone to the angle of the jaw, so that a standing body is 1 high: no mass of its own.</summary>
    public const double NeckH = 1 - (AnkleHeightH + ShankH + ThighH + LowerTrunkH + MiddleTrunkH + UpperTrunkH) - HeadH;
}
