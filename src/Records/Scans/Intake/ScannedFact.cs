using Slantwise.Records.Entries;

namespace Slantwise.Records.Scans.Intake;

/// <summary>A fact that a form says, and the item it comes from.</summary>
/// <param name="ItemKey">The item.</param>
/// <param name="PupilId">The pupil.</param>
/// <param name="TaskId">The task on the lesson's sheet.</param>
/// <param name="SetNumber">The set, from 1; none for a check that names no set.</param>
/// <param name="TrialNumber">The trial, from 1; none for anything but a trial.</param>
/// <param name="Fact">What it says.</param>
public sealed record ScannedFact(string ItemKey, Guid PupilId, Guid TaskId, int? SetNumber, int? TrialNumber, EntryFact Fact);
