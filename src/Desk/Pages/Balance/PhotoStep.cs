using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Marked;

namespace Slantwise.Desk.Pages.Balance;

/// <summary>One thing to mark: a point of the body, an end of what touches the floor, or an end of something upright.</summary>
/// <param name="Landmark">The point of the body; none for the others.</param>
/// <param name="Part">What touches; none for the others.</param>
/// <param name="Side">Left is the limb nearer to the first camera, right the farther one; Middle where one mark stands for both.</param>
/// <param name="End">0 or 1, which end of what has two.</param>
public readonly record struct PhotoStep(Landmark? Landmark, ContactPart? Part, Side Side, int End)
{
    /// <summary>The mark of a point of the body.</summary>
    public static PhotoStep Of(Landmark landmark, Side side) => new(landmark, null, side, 0);

    /// <summary>The mark of one end of what touches.</summary>
    public static PhotoStep Of(ContactPart part, Side side, int end) => new(null, part, side, end);

    /// <summary>The mark of the upper (0) or lower (1) end of something upright.</summary>
    public static PhotoStep Upright(int end) => new(null, null, Side.Middle, end);

    /// <summary>Its name in the page, such as <c>Hip-Middle</c>.</summary>
    public string Key => Landmark is { } landmark ? $"{landmark}-{Side}" : Part is { } part ? $"{part}-{Side}-{End}" : $"Upright-{End}";

    /// <summary>Whether the mark may be left out: everything but the shoulders and the hips, what touches, and something upright.</summary>
    public bool IsOptional => Landmark is not (null or Engines.Mechanics.Marked.Landmark.Shoulder or Engines.Mechanics.Marked.Landmark.Hip);
}
