namespace Slantwise.Desk.Pages.Tasks.Designer;

/// <summary>How the levels being designed use a factor.</summary>
public enum FactorUse
{
    /// <summary>It is the one that changes.</summary>
    Key = 1,

    /// <summary>It helps to make levels finer.</summary>
    Helps = 2,

    /// <summary>It stays where it is.</summary>
    Stays = 3,
}
