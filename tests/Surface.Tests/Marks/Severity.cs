namespace Slantwise.Surface.Tests.Marks;

/// <summary>How bad a fault is.</summary>
internal enum Severity
{
    /// <summary>As a teacher's photo or a child's sheet usually is.</summary>
    Fair,

    /// <summary>Seldom, and still to be read by a person at a glance.</summary>
    Hard,

    /// <summary>A photo one would take again: to be refused, or to be asked about.</summary>
    Beyond,
}
