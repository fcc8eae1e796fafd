using Slantwise.Records.Tasks;

namespace Slantwise.Desk.Pages.Sheets;

/// <summary>A level that could stand on a sheet.</summary>
/// <param name="level">The level as the sheet would print it.</param>
public sealed class LevelPick(Level level)
{
    /// <summary>The level as the sheet would print it.</summary>
    public Level Level { get; set; } = level;

    /// <summary>Whether it stands on the sheet.</summary>
    public bool IsPicked { get; set; }
}
