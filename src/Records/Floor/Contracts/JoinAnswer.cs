namespace Slantwise.Records.Floor.Contracts;

/// <summary>A device has joined.</summary>
/// <param name="Token">What it shows from now on; it holds for this device in this lesson.</param>
/// <param name="SchoolId">The owning school.</param>
/// <param name="LessonId">The lesson.</param>
/// <param name="LessonTitle">What the lesson is called; may be empty.</param>
/// <param name="ClassName">The class.</param>
/// <param name="Pupils">Whom to pick from, by label; nobody for teacher and board, who need not pick.</param>
/// <param name="State">How the lesson and the device stand.</param>
public sealed record JoinAnswer(
    string Token, Guid SchoolId, Guid LessonId, string LessonTitle, string ClassName, IReadOnlyList<PupilToPick> Pupils, FloorState State);
