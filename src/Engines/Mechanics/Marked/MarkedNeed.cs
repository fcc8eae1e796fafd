namespace Slantwise.Engines.Mechanics.Marked;

/// <summary>What has to be marked before there is an answer. Everything else may be left out, with a larger error.</summary>
public enum MarkedNeed
{
    /// <summary>The crown or the jaw.</summary>
    Head,

    /// <summary>A shoulder.</summary>
    Shoulder,

    /// <summary>A hip.</summary>
    Hip,

    /// <summary>A knee, an ankle, a heel or a toe.</summary>
    Leg,

    /// <summary>Something that touches the floor, with its ends.</summary>
    Contact,

    /// <summary>The two ends of something upright, where gravity is to be taken from it.</summary>
    Upright,
}
