namespace Slantwise.Records.Tasks.Designs;

/// <summary>What an adaptation starts from, as what a body or a person needs. Never a diagnosis.</summary>
public enum FunctionNeed
{
    /// <summary>Moves seated, in a wheelchair or on the floor.</summary>
    Seated = 1,

    /// <summary>Legs carry little, or one of them does.</summary>
    Legs = 2,

    /// <summary>Arms or hands carry or grip little, or one of them does.</summary>
    Arms = 3,

    /// <summary>Gets tired soon, or lifts little of the own weight.</summary>
    Strength = 4,

    /// <summary>Sees little.</summary>
    Sight = 5,

    /// <summary>Hears little.</summary>
    Hearing = 6,

    /// <summary>Needs quiet, order or no touch.</summary>
    Calm = 7,

    /// <summary>Needs short turns.</summary>
    Focus = 8,

    /// <summary>Needs few words, pictures or another language.</summary>
    Words = 9,

    /// <summary>Needs more time to put a movement together.</summary>
    Timing = 10,

    /// <summary>Would like to feel safe first.</summary>
    Confidence = 11,
}
