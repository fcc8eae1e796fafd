namespace Slantwise.Engines.Planning.Space;

/// <summary>What comes too near to what.</summary>
public enum ClashKind
{
    /// <summary>Two mats.</summary>
    MatAndMat = 1,

    /// <summary>A mat and a wall, or beyond it.</summary>
    MatAndWall = 2,

    /// <summary>A mat and an obstacle.</summary>
    MatAndObstacle = 3,

    /// <summary>Somebody may fall on another mat.</summary>
    FallAndMat = 4,

    /// <summary>Somebody may fall against a wall.</summary>
    FallAndWall = 5,

    /// <summary>Somebody may fall on an obstacle.</summary>
    FallAndObstacle = 6,

    /// <summary>Two who fall at once may meet.</summary>
    FallAndFall = 7,
}
