namespace Slantwise.Records.Groups;

/// <summary>How much a pupil has done something like it, as the teacher says. No measure of how well.</summary>
public enum PupilExperience
{
    /// <summary>New to it.</summary>
    New = 1,

    /// <summary>Has done it now and then.</summary>
    Some = 2,

    /// <summary>Does it often.</summary>
    Much = 3,
}
