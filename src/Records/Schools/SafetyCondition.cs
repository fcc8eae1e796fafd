namespace Slantwise.Records.Schools;

/// <summary>What a school asks for before weight on the head may be planned. Common practice, no source.</summary>
public enum SafetyCondition
{
    /// <summary>Mats lie under and around.</summary>
    MatsAround = 1,

    /// <summary>The steps before it were shown by the pupil.</summary>
    StepsBefore = 2,

    /// <summary>The teacher stands by: one mat at a time.</summary>
    TeacherBeside = 3,

    /// <summary>Hands carry most of it: whoever feels the neck comes down.</summary>
    HandsCarry = 4,

    /// <summary>Parents were told.</summary>
    ParentsTold = 5,
}
