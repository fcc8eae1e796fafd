namespace Slantwise.Records.Tasks.Designs;

/// <summary>Something that often goes another way in a task.</summary>
/// <param name="Seen">What is seen, one sentence.</param>
/// <param name="Cause">Its likely cause, one sentence for the teacher.</param>
/// <param name="Question">An open question to the pupil that gives neither the answer nor a level.</param>
public sealed record MovementError(string Seen, string Cause, string Question);
