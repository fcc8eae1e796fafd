namespace Slantwise.Records.Schools;

/// <summary>What a school allows on its floor. It removes levels before anything else does.</summary>
/// <remarks>Rules differ between authorities, so these are settings; the defaults are the cautious ones.</remarks>
public sealed record SafetyPolicy
{
    /// <summary>Weight on the head. Not allowed until the teacher changes it.</summary>
    public PolicyChoice HeadWeight { get; init; } = PolicyChoice.NotAllowed;

    /// <summary>Hips above the head, with no weight on the head.</summary>
    public PolicyChoice Inversion { get; init; } = PolicyChoice.Planned;

    /// <summary>Rolls over the back or the shoulder.</summary>
    public PolicyChoice Rolls { get; init; } = PolicyChoice.Planned;

    /// <summary>Partners who hold or secure a performer. Not allowed until the teacher changes it: guidance differs, and who secures does not watch the class.</summary>
    public PolicyChoice Spotting { get; init; } = PolicyChoice.NotAllowed;

    /// <summary>What has to be in place for weight on the head; where none is named, it is not allowed whatever <see cref="HeadWeight"/> says.</summary>
    public IReadOnlyList<SafetyCondition> HeadConditions { get; init; } = [SafetyCondition.MatsAround, SafetyCondition.StepsBefore, SafetyCondition.TeacherBeside, SafetyCondition.HandsCarry];

    /// <summary>The longest hold with weight on the head, in whole seconds, 1 to 60. A cautious number of our own; none was found published for schools.</summary>
    public int HeadHoldCapS { get; init; } = 5;

    /// <summary>What stays ruled out, and for how long, on the way back after a head injury, as the school sets it; someone must lift each by hand.</summary>
    /// <remarks>The days follow the return to sport of the UK's guidelines for grassroots sport, 21 days at the earliest; local rules and medical advice come first. Source: [UKConcussion2023].</remarks>
    public IReadOnlyList<ReturnStep> ReturnSteps { get; init; } =
        [new(BodyDemand.Inversion, 21), new(BodyDemand.HeadWeight, 21), new(BodyDemand.Roll, 21), new(BodyDemand.Impact, 21)];

    /// <summary>Whether two policies say the same, list by list.</summary>
    /// <param name="other">Another policy.</param>
    public bool Equals(SafetyPolicy? other) => other is not null
        && (HeadWeight, Inversion, Rolls, Spotting, HeadHoldCapS) == (other.HeadWeight, other.Inversion, other.Rolls, other.Spotting, other.HeadHoldCapS)
        && HeadConditions.SequenceEqual(other.HeadConditions) && ReturnSteps.SequenceEqual(other.ReturnSteps);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(HeadWeight, Inversion, Rolls, Spotting, HeadHoldCapS, HeadConditions.Count, ReturnSteps.Count);
}
