using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Slantwise.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class OpenFloor : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(
                name: "engaged_count",
                table: "entries",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "present_count",
                table: "entries",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "floor_lessons",
                columns: table => new
                {
                    school_id = table.Column<string>(type: "TEXT", nullable: false),
                    lesson_id = table.Column<string>(type: "TEXT", nullable: false),
                    code = table.Column<string>(type: "TEXT", nullable: false),
                    code_until = table.Column<long>(type: "INTEGER", nullable: false),
                    opened_at = table.Column<long>(type: "INTEGER", nullable: false),
                    closed_at = table.Column<long>(type: "INTEGER", nullable: true),
                    stopped_at = table.Column<long>(type: "INTEGER", nullable: true),
                    countdown_until = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_floor_lessons", x => new { x.school_id, x.lesson_id });
                    table.ForeignKey(
                        name: "fk_floor_lessons_lessons",
                        columns: x => new { x.school_id, x.lesson_id },
                        principalTable: "lessons",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "floor_devices",
                columns: table => new
                {
                    school_id = table.Column<string>(type: "TEXT", nullable: false),
                    lesson_id = table.Column<string>(type: "TEXT", nullable: false),
                    device_id = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<int>(type: "INTEGER", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    pupil_ids = table.Column<string>(type: "TEXT", nullable: false),
                    served_pupil_ids = table.Column<string>(type: "TEXT", nullable: false),
                    is_locked = table.Column<bool>(type: "INTEGER", nullable: false),
                    joined_at = table.Column<long>(type: "INTEGER", nullable: false),
                    left_at = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_floor_devices", x => new { x.school_id, x.lesson_id, x.device_id });
                    table.ForeignKey(
                        name: "fk_floor_devices_floor_lessons",
                        columns: x => new { x.school_id, x.lesson_id },
                        principalTable: "floor_lessons",
                        principalColumns: new[] { "school_id", "lesson_id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_floor_lessons_code",
                table: "floor_lessons",
                columns: new[] { "school_id", "code" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "floor_devices");

            migrationBuilder.DropTable(
                name: "floor_lessons");

            migrationBuilder.DropColumn(
                name: "engaged_count",
                table: "entries");

            migrationBuilder.DropColumn(
                name: "present_count",
                table: "entries");
        }
    }
}
