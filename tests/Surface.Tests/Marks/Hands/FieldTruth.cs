namespace Slantwise.Surface.Tests.Marks.Hands;

/// <summary>
/// What a field shows in truth. Rubbed out is empty, half filled and ringed are marked, a dot of less than 0.6 mm is empty. Of a field under a
/// <see cref="MarkStyle.Bridge"/> nobody can say: any answer is right, and it is counted apart.
/// </summary>
internal readonly record struct FieldTruth(MarkStyle Style, Trouble Trouble)
{
    public bool IsMarked => Style is not (MarkStyle.None or MarkStyle.Bridge);

    public bool IsOpen => Style is MarkStyle.Bridge;
}
