@echo off
rem SPDX-License-Identifier: Apache-2.0
rem Runs the built program, and builds it first where it is not built or its sources are newer.
setlocal
set "root=%~dp0..\.."
set "version=0.1.0"
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if /i "%~1"=="edit" if /i not "%~2"=="--help" if /i not "%~2"=="-h" goto edit
set "jar=%root%\layout\cli\target\bermwright-cli-%version%-all.jar"
call :built layout/cli
if errorlevel 1 exit /b 3
"%java%" -XX:+UseParallelGC -Djava.awt.headless=true -jar "%jar%" %*
exit /b %ERRORLEVEL%

:edit
set "jar=%root%\layout\editor\target\bermwright-editor-%version%-all.jar"
call :built layout/editor
if errorlevel 1 exit /b 3
"%java%" -jar "%jar%" %2 %3 %4 %5 %6 %7 %8 %9
exit /b %ERRORLEVEL%

rem built MODULE: makes sure that the jar is there and not older than the sources.
:built
if not exist "%jar%" goto build
rem Code 9 says that a source is newer than the jar; where it cannot be found out, what is built runs.
powershell -NoProfile -NonInteractive -Command "$built = (Get-Item -LiteralPath $env:jar).LastWriteTimeUtc; $newer = @(Get-Item -LiteralPath (Join-Path $env:root 'pom.xml')) + @('terrain', 'shielding', 'layout' | ForEach-Object { Get-ChildItem -LiteralPath (Join-Path $env:root $_) -Recurse -File } | Where-Object { $_.FullName -notmatch '\\target\\' -and ($_.Name -eq 'pom.xml' -or $_.FullName -match '\\src\\main\\') }) | Where-Object { $_.LastWriteTimeUtc -gt $built } | Select-Object -First 1; if ($newer) { exit 9 }" 1>nul 2>nul
if not errorlevel 9 exit /b 0
:build
echo bermwright: building %1 1>&2
pushd "%root%"
call mvn -q -B -DskipTests -Dcheckstyle.skip -pl %1 -am package 1>&2
set "code=%ERRORLEVEL%"
popd
if "%code%"=="0" if exist "%jar%" exit /b 0
echo bermwright: the build of %1 failed; it needs Java 17 and Maven 3.8 or later 1>&2
exit /b 1
