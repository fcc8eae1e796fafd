namespace Slantwise.Paper.Sheets;

/// <summary>A small drawn sign. None of them judges.</summary>
internal enum Sign
{
    None,
    Tick,
    Ring,
    Target,
    Box,
    Speech,
    Down,
    Along,
    Up,
}
