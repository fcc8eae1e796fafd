namespace Slantwise.Records.Units;

/// <summary>What pupils should be able to show after a unit.</summary>
/// <param name="Id">Its id within the unit; the identifier of its source where that has one.</param>
/// <param name="Code">The framework's code, 0 to 40 characters; may be empty for one the teacher wrote.</param>
/// <param name="Text">What it says, 0 to 500 characters; empty where only the code may be kept.</param>
/// <param name="Framework">Where it comes from, 0 to 120 characters; empty for the teacher's own.</param>
public sealed record Outcome(Guid Id, string Code, string Text, string Framework);
