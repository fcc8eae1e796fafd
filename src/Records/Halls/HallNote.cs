namespace Slantwise.Records.Halls;

/// <summary>A sentence about a layout, and the mat it is about.</summary>
/// <param name="Sentence">To show.</param>
/// <param name="Mat">The mat it leads to, as a place in the list; none for one about the teacher.</param>
public sealed record HallNote(string Sentence, int? Mat);
