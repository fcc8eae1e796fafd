# What the two commands need from the machine. Sourced by ./run and ./test; says one clear sentence for each thing missing.

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

say() { printf '%s\n' "$*" >&2; }

# May we install? Only as root on a Debian-like system.
may_install() { [[ $(id -u) == 0 ]] && command -v apt-get >/dev/null 2>&1; }

apt_install() {
  say "Installing $* ..."
  if [[ -z ${SLANTWISE_APT_FRESH:-} ]]; then
    DEBIAN_FRONTEND=noninteractive apt-get update -qq >/dev/null 2>&1 || say "  apt-get update did not succeed; going on with the lists that are here."
    export SLANTWISE_APT_FRESH=1
  fi
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$@" >/dev/null 2>&1
}

need_dotnet() {
  local root=$1 version
  version=$(cd "$root" && dotnet --version 2>/dev/null) || version=none
  [[ $version == 10.* ]] && return
  say "Slantwise needs the .NET 10 SDK and did not find it (found: $version)."
  say "Install it from https://dotnet.microsoft.com/download/dotnet/10.0 or your system's packages, then try again."
  return 1
}

node_major() { (node --version 2>/dev/null || true) | sed -n 's/^v\([0-9]*\).*/\1/p'; }

need_node() {
  local major candidate
  major=$(node_major)
  if [[ ${major:-0} -ge 20 ]] && command -v npm >/dev/null 2>&1; then return; fi
  if may_install; then
    candidate=$( (apt-cache policy nodejs 2>/dev/null || true) | sed -n 's/^ *Candidate: *\([0-9]*\).*/\1/p')
    if [[ ${candidate:-0} -ge 20 ]]; then
      apt_install nodejs npm || true
      major=$(node_major)
      if [[ ${major:-0} -ge 20 ]] && command -v npm >/dev/null 2>&1; then return; fi
    fi
  fi
  say "Slantwise is built with Node.js 20 or newer and its npm, and did not find them (found: $(node --version 2>/dev/null || echo none))."
  say "Install it from https://nodejs.org/en/download or your system's packages, then try again."
  return 1
}
