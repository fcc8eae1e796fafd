using Slantwise.Engines.Mechanics.Postures;

namespace Slantwise.Records.Tests.Postures.Figures;

/// <summary>Postures kept as they were when figures and sentences were looked at, so that a library that grows does not move them.</summary>
internal static class SamplePostures
{
    private static readonly string[] Texts =
    [
        """
        {"key": "two-feet", "group": "upright", "bow": 3.2, "joints": {"shoulderFlexion": 2.3, "shoulderAbduction": 8, "elbowFlexion": 8, "hipAbduction": 1.4,
        "hipRotation": 6, "ankleFlexion": 3}, "touches": ["foot.left", "foot.right"]}
        """,
        """
        {"key": "arabesque-hip", "group": "upright", "bow": 59.6, "lean": -2.4, "joints": {"spineFlexion": -38, "neckFlexion": -16, "neckLean": -0.1,
        "shoulderFlexion": 20, "shoulderAbduction": 85, "forearmPronation": 60, "hipFlexion.left": -30, "hipFlexion.right": 61.8, "hipAbduction.right": -4.1,
        "hipRotation.left": 25, "hipRotation.right": -0.2, "kneeFlexion.right": 2, "ankleFlexion.left": -45, "ankleFlexion.right": -0.3}, "touches":
        ["foot.right"]}
        """,
        """
        {"key": "stork", "group": "upright", "bow": 1.4, "lean": -2.9, "joints": {"spineLean": 2, "neckLean": -0.1, "shoulderAbduction": 75, "elbowFlexion":
        8, "forearmPronation": 60, "hipFlexion.left": 50, "hipFlexion.right": -0.6, "hipAbduction.left": 40, "hipAbduction.right": -3.9, "hipRotation.left":
        55, "hipRotation.right": 5, "kneeFlexion.left": 118, "ankleFlexion.left": -35, "ankleFlexion.right": 2.6}, "touches": ["foot.right"]}
        """,
        """
        {"key": "squat", "group": "upright", "bow": 34.9, "joints": {"spineFlexion": 12, "neckFlexion": -28, "shoulderFlexion": 110, "forearmPronation": 40,
        "hipFlexion": 119.7, "hipAbduction": 19.7, "hipRotation": 1.8, "kneeFlexion": 116.6, "ankleFlexion": 31.4}, "touches": ["foot.left", "foot.right"]}
        """,
        """
        {"key": "lunge", "group": "upright", "bow": 0.7, "lean": 5.5, "joints": {"spineFlexion": -11.7, "neckFlexion": -1.4, "neckLean": -0.2,
        "shoulderFlexion": -0.1, "shoulderAbduction": 88, "elbowFlexion": -0.4, "forearmPronation": 60, "hipFlexion.left": 64.1, "hipFlexion.right": -30.3,
        "hipAbduction.left": 5.8, "hipAbduction.right": -5.7, "hipRotation.left": -3.2, "hipRotation.right": 0.7, "kneeFlexion.left": 63.4,
        "kneeFlexion.right": 31, "ankleFlexion.left": 0.4, "ankleFlexion.right": 21}, "touches": ["foot.left", "toes.right"]}
        """,
        """
        {"key": "long-sit", "group": "patch", "bow": -2.8, "joints": {"spineFlexion": 4, "shoulderAbduction": 82, "forearmPronation": 60, "hipFlexion": 86.4,
        "hipAbduction": 2, "ankleFlexion": -10}, "touches": ["seat", "heel.left", "heel.right"]}
        """,
        """
        {"key": "bench-leg-back", "group": "hands", "bow": 77.9, "lean": -0.1, "joints": {"neckFlexion": -15, "shoulderFlexion": 79.5, "shoulderAbduction":
        0.3, "shoulderRotation.left": 0.9, "shoulderRotation.right": 0.8, "elbowFlexion": 4, "forearmPronation": 86.2, "wristExtension": 84.4,
        "hipFlexion.left": -10, "hipFlexion.right": 79, "kneeFlexion.right": 92.8, "ankleFlexion.left": -45, "ankleFlexion.right": -55}, "touches":
        ["hand.left", "hand.right", "knee.right", "instep.right"]}
        """,
        """
        {"key": "side-support", "group": "hands", "bow": -1.6, "lean": -61.5, "joints": {"shoulderFlexion.right": -2, "shoulderAbduction.left": 112,
        "shoulderAbduction.right": 65.2, "shoulderRotation.right": -5.2, "forearmPronation.right": 5.2, "wristExtension.right": 86.3, "hipAbduction.left": -7,
        "hipAbduction.right": -0.7, "hipRotation.right": 4}, "touches": ["hand.right", "heel.right", "toes.right"]}
        """,
        """
        {"key": "v-sit-hands", "group": "patch", "bow": -30.7, "joints": {"spineFlexion": 10, "neckFlexion": 12, "shoulderFlexion": -48.5,
        "shoulderAbduction": 9.8, "shoulderRotation": -8.7, "elbowFlexion": 37.8, "forearmPronation": 63.1, "wristExtension": 80.2, "hipFlexion": 100,
        "ankleFlexion": -45}, "touches": ["seat", "hand.left", "hand.right"]}
        """,
        """
        {"key": "tuck-sit", "group": "patch", "bow": -41.5, "joints": {"spineFlexion": 34, "neckFlexion": 10, "shoulderFlexion": 25.3, "shoulderAbduction":
        7.3, "shoulderRotation": -10.9, "elbowFlexion": 94.1, "forearmPronation": 50, "hipFlexion": 122, "hipAbduction": 6, "kneeFlexion": 118,
        "ankleFlexion": -30}, "touches": ["seat"]}
        """,
        """
        {"key": "tripod", "group": "inverted", "bow": 142.4, "joints": {"spineFlexion": 22.8, "neckFlexion": -10.8, "shoulderFlexion": 81,
        "shoulderAbduction": 5, "shoulderRotation": -0.3, "elbowFlexion": 87.2, "forearmPronation": 85.1, "wristExtension": 87, "hipFlexion": 131.3,
        "hipAbduction": 18.5, "hipRotation": 0.1, "kneeFlexion": 121, "ankleFlexion": -30}, "touches": ["hand.left", "hand.right", "crown"]}
        """,
        """
        {"key": "handstand-wall", "group": "inverted", "bow": 195.7, "joints": {"spineFlexion": -7.3, "neckFlexion": -22.1, "shoulderFlexion": 179,
        "shoulderAbduction": 1, "shoulderRotation": -0.2, "elbowFlexion": 1.8, "forearmPronation": 84.4, "wristExtension": 95, "hipFlexion": -4.3,
        "kneeFlexion": 0.1, "ankleFlexion": -10}, "touches": ["hand.left", "hand.right"], "wall": ["heel.left", "heel.right"]}
        """,
        """
        {"key": "shoulder-stand", "group": "inverted", "bow": -164.2, "joints": {"spineFlexion": 28.1, "neckFlexion": 47, "shoulderFlexion": -55.8,
        "shoulderAbduction": -5.9, "shoulderRotation": -11.3, "elbowFlexion": 93.3, "forearmPronation": 60, "wristExtension": 0.1, "hipFlexion": 10,
        "ankleFlexion": -45}, "touches": ["upperBack", "elbow.left", "elbow.right"]}
        """,
        """
        {"key": "pair-bench-stand", "group": "partner", "bow": 79.1, "joints": {"neckFlexion": -15, "shoulderFlexion": 84.1, "shoulderAbduction": 3.5,
        "shoulderRotation": -5.8, "elbowFlexion": 14.4, "forearmPronation": 78.8, "wristExtension": 70.6, "hipFlexion": 82.9, "hipAbduction": 7.4,
        "hipRotation": -0.9, "kneeFlexion": 96.3, "ankleFlexion": -50}, "touches": ["hand.left", "hand.right", "knee.left", "knee.right"], "partner": {"bow":
        5.7, "joints": {"neckFlexion": 1, "shoulderFlexion": 0.1, "shoulderAbduction": 86, "elbowFlexion": 0.3, "forearmPronation": 60, "hipFlexion": 10,
        "hipAbduction": 1.3, "hipRotation": 12.7, "kneeFlexion": 14, "ankleFlexion": 9.5}, "touches": [], "joins": {"foot.left": "hip.left", "foot.right":
        "hip.right"}}}
        """,
        """
        {"key": "pair-lean-out", "group": "partner", "bow": -14, "joints": {"spineFlexion": 4, "neckFlexion": 6, "shoulderFlexion": 78, "forearmPronation":
        20, "hipFlexion": 2.5, "hipAbduction": 0.7, "hipRotation": 2.2, "kneeFlexion": 1.7, "ankleFlexion": -14.8}, "touches": ["foot.left", "foot.right"],
        "partner": {"bow": -14, "turn": 180, "joints": {"spineFlexion": 4, "neckFlexion": 6, "shoulderFlexion": 78, "forearmPronation": 20, "hipFlexion": 2.5,
        "hipAbduction": 0.7, "hipRotation": 2.2, "kneeFlexion": 1.7, "ankleFlexion": -14.8}, "touches": ["foot.left", "foot.right"], "joins": {"hand.left":
        "hand.right", "hand.right": "hand.left"}}}
        """,
    ];

    public static IReadOnlyDictionary<string, SettledPosture> All { get; } = Texts
        .Select(text => PostureText.Read(text).Posture ?? throw new InvalidOperationException($"A sample cannot be read: {text}"))
        .ToDictionary(posture => posture.Key, posture => posture.Settle());

    public static SettledPosture Of(string key) => All[key];
}
