using Slantwise.Engines.Planning.Blocks;

namespace Slantwise.Records.Planning;

/// <summary>Published values beside the shares of a lesson: to orient by, never a rule, and none of them measured in lessons like these.</summary>
/// <remarks>
/// Activity: half of a lesson, as public health bodies ask for moderate to vigorous activity; balancing is neither. Source: [Hollis2017].
/// Instruction below a quarter and waiting up to three tenths were seen in lessons, and are no goals. Source: [Spittle2013].
/// Management and transitions have none here, since no published value was seen.
/// </remarks>
public static class TimeOrientation
{
    /// <summary>At most one a category.</summary>
    public static IReadOnlyList<OrientationValue> Values { get; } =
    [
        new(TimeCategory.Activity, 0.5, 1, "Hollis et al. 2017"),
        new(TimeCategory.Instruction, 0, 0.25, "Spittle 2013"),
        new(TimeCategory.Waiting, 0, 0.3, "Spittle 2013"),
    ];
}
