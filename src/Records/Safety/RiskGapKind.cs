namespace Slantwise.Records.Safety;

/// <summary>What a risk page does not know yet.</summary>
public enum RiskGapKind
{
    /// <summary>The school has no emergency notes.</summary>
    NoEmergencyNotes = 1,

    /// <summary>The lesson has no sheet, so no tasks.</summary>
    NoSheet = 2,

    /// <summary>A task takes mats, and the lesson does not say how many there are.</summary>
    NoMats = 3,

    /// <summary>A task has no design, so that its mats and free space are not known.</summary>
    NoDesign = 4,

    /// <summary>The policy leaves nothing of a task.</summary>
    NothingOffered = 5,

    /// <summary>Some pupils have no level left in a task.</summary>
    PupilsWithoutLevel = 6,
}
