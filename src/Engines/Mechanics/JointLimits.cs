namespace Slantwise.Engines.Mechanics;

/// <summary>How far joints move in a supple, healthy body, so that no posture asks for the impossible.</summary>
/// <remarks>Clinical ranges, from memory, widened where gymnasts commonly go further; not a limit for teaching. Source: [AAOS1965].</remarks>
public static class JointLimits
{
    private static readonly Dictionary<Joint, (double LeastDeg, double MostDeg)> Limits = new()
    {
        [Joint.SpineFlexion] = (-60, 100),
        [Joint.SpineLean] = (-40, 40),
        [Joint.SpineTwist] = (-45, 45),
        [Joint.NeckFlexion] = (-70, 70),
        [Joint.NeckLean] = (-45, 45),
        [Joint.NeckTurn] = (-80, 80),
        [Joint.ShoulderFlexion] = (-75, 190),
        [Joint.ShoulderAbduction] = (-45, 185),
        [Joint.ShoulderRotation] = (-90, 100),
        [Joint.ElbowFlexion] = (-5, 150),
        [Joint.ForearmPronation] = (-90, 90),
        [Joint.WristExtension] = (-85, 95),
        [Joint.HipFlexion] = (-40, 140),
        [Joint.HipAbduction] = (-35, 80),
        [Joint.HipRotation] = (-50, 70),
        [Joint.KneeFlexion] = (-5, 155),
        [Joint.AnkleFlexion] = (-65, 35),
    };

    /// <summary>The least and the most of a movement.</summary>
    /// <param name="joint">The movement.</param>
    public static (double LeastDeg, double MostDeg) Of(Joint joint) => Limits[joint];
}
