namespace Slantwise.Engines.Drawing.Figures;

/// <summary>A head, an egg with hair and a face, and the neck it sits on.</summary>
/// <param name="Middle">The ball that holds the egg.</param>
/// <param name="Face">The half axis out of the face.</param>
/// <param name="Left">The half axis out of the left ear.</param>
/// <param name="Crown">The half axis out of the crown.</param>
/// <param name="Neck">The neck, from the shoulders into the head.</param>
public sealed record FigureHead(Round Middle, FigureAxis Face, FigureAxis Left, FigureAxis Crown, IReadOnlyList<Round> Neck);
