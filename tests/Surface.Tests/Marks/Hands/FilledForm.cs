using Slantwise.Engines.Marks;
using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Hands;

/// <summary>Who filled a form in, and what is true of each of its fields.</summary>
/// <param name="Leaf">The paper with its marks.</param>
/// <param name="Pen">What was written with.</param>
/// <param name="Truths">A truth a field, in the layout's order.</param>
internal sealed record FilledForm(Leaf Leaf, MarkPen Pen, IReadOnlyList<FieldTruth> Truths);
