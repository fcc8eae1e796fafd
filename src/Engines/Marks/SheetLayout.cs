namespace Slantwise.Engines.Marks;

/// <summary>
/// One printed form, as the printer draws it and as the reader looks for it; millimetres from its top left corner, x to the right, y down. A page of paper
/// carries one form, or two beside each other at a smaller scale.
/// </summary>
/// <param name="WidthMm">Its width, more than 0.</param>
/// <param name="HeightMm">Its height, more than 0.</param>
/// <param name="Anchors">Black squares to find it by; the corners first, clockwise from the top left, then those along the edges.</param>
/// <param name="Code">Where its code is printed, which tells what form it is.</param>
/// <param name="Fields">What can be marked. Inside a field nothing is printed.</param>
/// <param name="Writings">Where something may be written that is kept as a picture and not read.</param>
public sealed record SheetLayout(
    double WidthMm, double HeightMm, IReadOnlyList<Anchor> Anchors, CodePlace Code, IReadOnlyList<MarkField> Fields, IReadOnlyList<WrittenField> Writings);
