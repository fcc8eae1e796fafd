namespace Slantwise.Paper.Cards;

/// <summary>The parts of a card, broken into lines at a size of type.</summary>
internal sealed record CardParts(
    double SizePt, double TitlePt, double CuePt, double CautionPt, IReadOnlyList<string> Title, IReadOnlyList<string> Purpose, IReadOnlyList<string> Caution, TileFit? Tiles, CueLines? Cues);
