namespace Slantwise.Engines.Marks;

/// <summary>A picture in grey.</summary>
/// <param name="WidthPx">Its width, 1 or more.</param>
/// <param name="HeightPx">Its height, 1 or more.</param>
/// <param name="Values">Row by row from the top left, 0 for black to 255 for white.</param>
public sealed record GreyImage(int WidthPx, int HeightPx, byte[] Values);
